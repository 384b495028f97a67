"""The act's own change: from the table, with what wears out, what is captive and what a torque leaves loose."""

from functools import cache

from guidebuild.device.acts import OPENING, TABLE, Verb
from guidebuild.device.states import Kind
from guidebuild.device.things import Hole, Thing
from guidebuild.device.units import amount
from guidebuild.guide.blocks.fastener import FastenerAct
from guidebuild.proof.asking import Asking
from guidebuild.proof.plain import HALF, WORN

_TIGHTENING = (Verb.TIGHTEN, Verb.REFIT)


@cache
def ends(kind: Kind, verb: Verb) -> int:
    """The state that the table says."""
    return int(TABLE[kind, verb].end)


def end(thing: Thing, verb: Verb) -> int:
    """The state that an act leaves a thing in: what is single-use is worn when it is opened."""
    return WORN if thing.single_use and verb in OPENING else ends(thing.kind, verb)


def change(ask: Asking) -> None:
    """The thing is in its new state, in every configuration in which the act is done."""
    thing, verb = ask.thing, ask.verb
    ask.scene.put(thing.key, ask.done, end(thing, verb))
    if isinstance(thing, Hole) and verb in _TIGHTENING:
        too_low = _below_the_record(ask, thing)
        if too_low:
            ask.scene.put(thing.key, too_low, HALF)
    if ask.spoilt:
        ask.scene.forget(thing.key, ask.spoilt)


def _below_the_record(ask: Asking, hole: Hole) -> int:
    """Where a screw is tightened to less than its record says: the first pass of two."""
    act = ask.work.act
    said = act.torque.figure if isinstance(act, FastenerAct) and act.torque else None
    reached = amount(said, "torque") if said else None
    if reached is None:
        return 0
    below, rest = 0, ask.done
    for case in hole.torque:
        here = rest & ask.scene.configurations.bits(case.when)
        wanted = amount(case.value.figure, "torque") if case.value.figure else None
        if wanted is not None and reached < wanted:
            below |= here
        rest ^= here
    return below
