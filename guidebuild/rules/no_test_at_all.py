"""A guide takes a device apart and puts it together, and checks nothing.

Nobody knows at the end whether it works. Even a guide that opens no plug ends with a look: the lamp
lights, nothing rattles, nothing is left on the tray.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.record import POWER
from guidebuild.device.states import State
from guidebuild.guide.blocks.check import Check
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import by_verb, leads_to, walked
from guidebuild.proof.questions.testing import untested
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "this guide takes the device apart and checks nothing"

HELP = "end with a check that shows that the device works, or that the work is done"


def check(proof: Proof) -> Iterator[Hit]:
    """Silent where a plug that carries a function was closed again: what is untested can be named there."""
    opened = 0
    if None in by_verb(proof):  # a check
        return
    for one in walked(proof):
        if isinstance(one.doing, Check):
            continue
        if leads_to(proof, one.doing) == State.OUT and one.doing.thing != POWER:
            opened |= one.where
    if opened and proof.guide.goal.verb != "remove" and not any(untested(proof)):
        yield Hit(proof.guide.title.span, {}, (), opened)
