"""A part that was fitted at the start is off or only lifted at the end.

It lies on the bench when the device is closed. A small part that nobody misses at once is the
dangerous one: an insulating sheet, an earth strap, a spacer.

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

MESSAGE = "{thing} {is} still {state} at the end of the guide"

HELP = "{do} {thing} after this; to leave {it} {end} on purpose, say so in the front matter: `ends: {{{id}: {end}}}`"


def check(proof: Proof) -> Iterator[Hit]:
    for loose in endings(proof, _is_one):
        lifted = loose.first.found == State.HALF
        yield loose.hit(proof, do="lower" if lifted else "fit")


def _is_one(ending: Ending, thing: Thing) -> bool:
    return falls_short(ending) and thing.kind is Kind.PART
