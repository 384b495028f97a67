"""Something is emptied while its drain is shut, or while what fills it is still in.

The reader believes that the capacitor is discharged or the oil is out, and works on. A capacitor
that its supply still feeds is full again in a second; a tank whose drain is shut is as full as
before.

Source: 29 CFR 1910.147(d)(5): where stored energy can build up again, isolation is verified until
the work is done; as restated in public notes.
"""

from collections.abc import Iterator

from guidebuild.device.naming import done
from guidebuild.device.states import State, word_for
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import put_there
from guidebuild.proof.questions.joined import unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SAFETY)

MESSAGE = "{thing} {is} {done} in vain: {blame} {blame_is} still {state}"

HELP = "before this act: open {blame} if it is the drain, isolate it if it fills {thing}"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.DRAIN):
        move = mistake.move
        kinds = {proof.device.things[key].kind for key in mistake.blames}
        there = put_there(proof, mistake.blames, move, mistake.where)
        yield mistake.hit(
            proof,
            there,
            done=done(move.verb, proof.device.things[move.thing]),
            state=word_for(kinds.pop(), State.IN) if len(kinds) == 1 else "in",
        )
