"""Something is worked on while the energy that guards it is still there.

A charged capacitor, a tensioned spring, a pressure, hot oil, or the mains: what hurts the reader is
not the part in the hand. The record says with `guards` what has to be released, opened or unplugged
before a thing may be touched.

Source: 29 CFR 1910.147(d)(5), "all potentially hazardous stored or residual energy shall be
relieved, disconnected, restrained, and otherwise rendered safe", before the work; as restated in
public notes.
"""

from collections.abc import Iterator

from guidebuild.device.states import State, word_for
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import put_there
from guidebuild.proof.questions.joined import unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SAFETY)

MESSAGE = "{thing} {is} worked on while {blame} {blame_is} still {state}"

HELP = "before this act: release, open or unplug {blame}, and say how the reader makes sure of it"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.SAFE):
        kinds = {proof.device.things[key].kind for key in mistake.blames}
        state = word_for(kinds.pop(), State.IN) if len(kinds) == 1 else "in"
        there = put_there(proof, mistake.blames, mistake.move, mistake.where)
        yield mistake.hit(proof, there, state=state)
