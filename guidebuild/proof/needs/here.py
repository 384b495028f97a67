"""Here, and in a state that the act starts from: the first two needs, which split one question.

Opening acts work on what is left on the old unit, too.
"""

from functools import cache

from guidebuild.device.acts import OPENING, TABLE, Verb
from guidebuild.device.states import Kind
from guidebuild.proof.asking import Asking, Lack, lack
from guidebuild.proof.plain import ANY, GONE, HALF, LEFT


@cache
def starts(kind: Kind, verb: Verb, captive: bool = False) -> int:
    """The states that an act starts from. A captive screw may be started though it is loose already."""
    states = int(TABLE[kind, verb].start)
    if verb in OPENING or verb is Verb.LOOSEN:
        states |= LEFT
    if captive and verb is Verb.START:
        states |= HALF
    return states


def here(ask: Asking, starts_from: int) -> Lack | None:
    """Not absent, nor left on the old unit, as far as the act does not start from there."""
    wrong = GONE & ~starts_from
    return lack(ask.scene.surely(ask.key, wrong) & ask.where, {}) if wrong else None


def state(ask: Asking, starts_from: int) -> Lack | None:
    """In one of the states that the act starts from."""
    return lack(ask.scene.surely(ask.key, ANY & ~starts_from) & ask.where, {})
