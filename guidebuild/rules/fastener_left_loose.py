"""A screw is in at the end, and not tight.

It was loosened or started by hand, or tightened in the first pass below the figure of the record,
and no act tightens it. Nobody can see it: the head sits where it should, and the part works loose
in use.

Source: leaving things out is the largest class of maintenance errors (56 % of 122 at one airline;
of these, fasteners undone or incomplete 22 %), Graeber and Marx 1993 as restated by Busch 2008; not
read in the original.
"""

from collections.abc import Iterator

from guidebuild.device.states import Kind, State
from guidebuild.device.things import Thing
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Ending
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.joined import endings, falls_short
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} still loose at the end of the guide"

HELP = "tighten {thing} after this, to the torque of the record"


def check(proof: Proof) -> Iterator[Hit]:
    for loose in endings(proof, _is_one):
        yield loose.hit(proof)


def _is_one(ending: Ending, thing: Thing) -> bool:
    return falls_short(ending) and thing.kind is Kind.FASTENER and ending.found == State.HALF
