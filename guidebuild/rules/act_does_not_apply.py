"""An act is asked for that is already done, or can't be done in this state.

A screw is taken out twice, a plug that is open is pulled again, a part is lowered that was not
lifted. The reader looks for a second screw. Mostly a step was copied, moved, or is done by a shared
stage already.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.acts import CLOSING
from guidebuild.device.naming import subject
from guidebuild.device.states import State, word_for
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import last_done
from guidebuild.proof.questions.joined import Mistake, unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} already {state} here, so this act does not apply"

HELP = (
    "drop this act, or the earlier one that did it; if only some units need it, give it a `when:`; "
    "what is exchanged is first removed"
)


def check(proof: Proof) -> Iterator[Hit]:
    """An act with what it undoes and does up is one mistake, told at the first of them."""
    groups: dict[tuple[int, str], list[Mistake]] = {}
    for mistake in unmet(proof, Need.STATE, Need.OLD_UNIT):
        worn = mistake.first.found == State.WORN and mistake.move.verb in CLOSING
        if not worn:  # a worn thing put back is another mistake
            key = id(mistake.move.act), mistake.first.step.id
            groups.setdefault(key, []).append(mistake)
    for group in groups.values():
        yield _hit(proof, group)


def _hit(proof: Proof, group: list[Mistake]) -> Hit:
    first = group[0].first
    kind = proof.device.things[first.thing].kind
    alike = [
        one
        for one in group
        if one.first.found == first.found and proof.device.things[one.first.thing].kind is kind
    ]
    words = subject(proof.device, [key for one in alike for key in one.things])
    there = last_done(proof, group[0].things, group[0].move, group[0].where)
    return group[0].hit(proof, there, **words, state=word_for(kind, first.found))
