"""Something is still on the old unit when that goes, and the new one does not bring it.

The reader exchanges a unit, throws the old one away, and finds at assembly that the bar, the screw
or the cable on it was needed. The form in which the new unit is sold decides: a bare unit brings
nothing.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.states import State
from guidebuild.device.things import Thing
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Ending
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.joined import endings
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} still on the old unit, and the new one does not bring {it}"

HELP = (
    "move {thing} over before the old unit goes, or list it under `arrives-with` of the kit's form"
)


def check(proof: Proof) -> Iterator[Hit]:
    for loose in endings(proof, _is_one):
        yield loose.hit(proof)


def _is_one(ending: Ending, thing: Thing) -> bool:
    return ending.because == "lost" or (
        ending.because in ("state", "ends") and ending.found == State.LEFT
    )
