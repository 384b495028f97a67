"""Packing that comes on the new unit is still on it at the end.

A protective film, a transport lock or a cap over a lens is made to be overlooked. It stops the
device from working, or lets it work until it is warm.

Source: leaving things out is the largest class of maintenance errors (56 % of 122 at one airline;
of these, fasteners undone or incomplete 22 %), Graeber and Marx 1993 as restated by Busch 2008; not
read in the original.
"""

from collections.abc import Iterator

from guidebuild.device.things import Thing
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Ending
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.joined import endings
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} still on the new unit at the end"

HELP = "take {thing} off after this, before the new unit is out of reach: `part` with `remove:`"


def check(proof: Proof) -> Iterator[Hit]:
    for loose in endings(proof, _is_one):
        yield loose.hit(proof)


def _is_one(ending: Ending, thing: Thing) -> bool:
    return ending.because == "packing"
