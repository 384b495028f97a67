"""A screw that was in at the start is out at the end.

A screw is left over on the tray. The reader does not know where it belongs, and the part that it
held rattles, leaks or loses its earth. A guide that takes a screw out has to say when it goes back,
unless it says that it ends out.

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

MESSAGE = "{thing} {is} still out at the end of the guide"

HELP = "put {thing} back after this; to leave {it} out on purpose, say so in the front matter: `ends: {{{id}: out}}`"


def check(proof: Proof) -> Iterator[Hit]:
    for loose in endings(proof, _is_one):
        yield loose.hit(proof)


def _is_one(ending: Ending, thing: Thing) -> bool:
    return falls_short(ending) and thing.kind is Kind.FASTENER and ending.found != State.HALF
