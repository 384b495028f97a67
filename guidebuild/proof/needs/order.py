"""Which needs are asked of which act, in which order. The first two, here and state, are asked of every act."""

from collections.abc import Callable
from functools import cache
from typing import TypeAlias

from guidebuild.device.acts import Verb
from guidebuild.device.states import Kind
from guidebuild.device.things import Thing
from guidebuild.proof.asking import Asking, Lack
from guidebuild.proof.bench import Bench
from guidebuild.proof.mistake import Need
from guidebuild.proof.needs import (
    between,
    dead,
    drain,
    free,
    met,
    old_unit,
    reach,
    safe,
    shut,
    source,
)

Question: TypeAlias = Callable[[Asking], Lack | None]
Questions: TypeAlias = tuple[tuple[Need, Question], ...]
AskedOf: TypeAlias = Callable[[Kind, Verb], bool]
MayFail: TypeAlias = Callable[[Bench, Verb, Thing], bool]

ORDER: tuple[tuple[Need, AskedOf, MayFail, Question], ...] = (
    (Need.OLD_UNIT, old_unit.asked_of, old_unit.may_fail, old_unit.old_unit),
    (Need.REACH, reach.asked_of, reach.may_fail, reach.reach),
    (Need.SAFE, safe.asked_of, safe.may_fail, safe.safe),
    (Need.DEAD, dead.asked_of, dead.may_fail, dead.dead),
    (Need.FREE, free.asked_of, free.may_fail, free.free),
    (Need.MET, met.asked_of, met.may_fail, met.met),
    (Need.SHUT, shut.asked_of, shut.may_fail, shut.shut),
    (Need.DRAIN, drain.asked_of, drain.may_fail, drain.drain),
    (Need.BETWEEN, between.asked_of, between.may_fail, between.between),
    (Need.SOURCE, source.asked_of, source.may_fail, source.source),
)


@cache
def asked(kind: Kind, verb: Verb) -> tuple[tuple[Need, MayFail, Question], ...]:
    """What is asked of an act on things of a kind."""
    return tuple((need, may, ask) for need, of, may, ask in ORDER if of(kind, verb))


def needs(bench: Bench, verb: Verb, thing: Thing) -> Questions:
    """What is asked of an act on a thing; what the record rules out can't fail and is left out."""
    rows = asked(thing.kind, verb)
    return tuple([(need, ask) for need, may_fail, ask in rows if may_fail(bench, verb, thing)])
