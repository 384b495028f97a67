"""A fluid, a gas, a spring or a setting that the device had at the start is gone at the end.

The oil is drained and nothing fills it; the calibration is lost and nothing sets it. The device
starts, and fails later. What fills by itself (a capacitor from its supply) is not meant: the record
says so with `filled-by`.

Source: leaving things out is the largest class of maintenance errors (56 % of 122 at one airline;
of these, fasteners undone or incomplete 22 %), Graeber and Marx 1993 as restated by Busch 2008; not
read in the original.
"""

from collections.abc import Iterator

from guidebuild.device.states import Kind
from guidebuild.device.things import Thing
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Ending
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.joined import endings, falls_short
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} still {state} at the end of the guide"

HELP = "restore {thing} after this with a `store` block, or say in the record what fills it"


def check(proof: Proof) -> Iterator[Hit]:
    for loose in endings(proof, _is_one):
        yield loose.hit(proof)


def _is_one(ending: Ending, thing: Thing) -> bool:
    return falls_short(ending) and thing.kind in (Kind.STORE, Kind.POWER)
