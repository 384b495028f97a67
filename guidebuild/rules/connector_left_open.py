"""A plug that was in at the start is open at the end.

The device goes back together and one function is dead; all of it has to come apart again. It
happens most with plugs that are opened in one stage and would be closed in another.

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

MESSAGE = "{thing} {is} still open at the end of the guide"

HELP = "reconnect {thing} after this; to leave {it} open on purpose, say so in the front matter: `ends: {{{id}: open}}`"


def check(proof: Proof) -> Iterator[Hit]:
    for loose in endings(proof, _is_one):
        yield loose.hit(proof)


def _is_one(ending: Ending, thing: Thing) -> bool:
    return falls_short(ending) and thing.kind is Kind.CONNECTOR
