"""An act is asked for that is already done, or can't be done in this state.

A screw is taken out twice, a plug that is open is pulled again, a part is lowered that was not
lifted. The reader looks for a second screw. Mostly a step was copied, moved, or is done by a shared
stage already.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.acts import CLOSING
from guidebuild.device.states import State, word_for
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import last_done
from guidebuild.proof.questions.joined import unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} already {state} here, so this act does not apply"

HELP = (
    "drop this act, or the earlier one that did it; if only some units need it, give it a `when:`"
)


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.STATE, Need.OLD_UNIT):
        first = mistake.first
        if first.found == State.WORN and mistake.move.verb in CLOSING:
            continue  # a worn thing put back is another mistake
        kind = proof.device.things[first.thing].kind
        there = last_done(proof, mistake.things, mistake.move, mistake.where)
        yield mistake.hit(proof, there, state=word_for(kind, first.found))
