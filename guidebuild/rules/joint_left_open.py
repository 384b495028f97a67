"""A clip, latch, solder joint, tape or cable guide that was closed at the start is open at the end.

Most joints close by themselves when their part goes on. Solder, tape and a bead of sealant never
do, nor does a joint that was opened while its parts stayed together: a latch, a cable in its guide.
These need an act of their own, and are easily forgotten: a cable out of its guide is crushed by the
cover.

Source: leaving things out is the largest class of maintenance errors (56 % of 122 at one airline;
of these, fasteners undone or incomplete 22 %), Graeber and Marx 1993 as restated by Busch 2008; not
read in the original.
"""

from collections.abc import Iterator

from guidebuild.device.ends import STAY_OPEN
from guidebuild.device.states import State
from guidebuild.device.things import Joint, Thing
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Ending
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.joined import endings, falls_short
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} still open at the end of the guide"

HELP = "close {thing} after this with a `joint` block; to leave {it} {end} on purpose, say so: `ends: {{{id}: {end}}}`"


def check(proof: Proof) -> Iterator[Hit]:
    for loose in endings(proof, _is_one):
        yield loose.hit(proof)


def _is_one(ending: Ending, thing: Thing) -> bool:
    return (
        falls_short(ending)
        and isinstance(thing, Joint)
        and not (ending.found == State.WORN and thing.joint not in STAY_OPEN)
    )
