"""Something is worked on while a part that it lies behind is still fitted.

The hand can't get there. On the bench the reader stops, guesses that a step is missing, and takes
off whatever seems to be in the way; or forces a tool past the part and breaks it. Mostly a step was
moved, or a cover goes back on one step too early.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import put_there
from guidebuild.proof.questions.joined import unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} behind {blame}, which {blame_is} still fitted"

HELP = "take {blame} off before this act; if it can be reached past {blame}, correct `behind` in the record"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.REACH):
        there = put_there(proof, mistake.blames, mistake.first.doing, mistake.where)
        yield mistake.hit(proof, there)
