"""Something is left over at the end: the new unit brought its own, or a screw has no hole any more.

The reader counts the tray at the end and finds a part too many. Without a word in the guide that
looks like a mistake, and the device is opened again to look for the empty place.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.things import Thing
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Ending
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.joined import endings
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} left over: the new unit brings its own, or the place for {it} is gone"

HELP = (
    "say in this step what becomes of {thing}, and with `ends:` that it ends off, "
    "or change what the kit's form brings"
)


def check(proof: Proof) -> Iterator[Hit]:
    for loose in endings(proof, _is_one):
        yield loose.hit(proof)


def _is_one(ending: Ending, thing: Thing) -> bool:
    return ending.because == "left-over"
