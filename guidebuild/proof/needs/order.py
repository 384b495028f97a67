"""Which needs are asked of which act, in which order. The first two, here and state, are asked of every act."""

from collections.abc import Callable
from typing import TypeAlias

from guidebuild.device.acts import Verb
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
AskedOf: TypeAlias = Callable[[Bench, Verb, Thing], bool]

ORDER: tuple[tuple[Need, AskedOf, Question], ...] = (
    (Need.OLD_UNIT, old_unit.asked_of, old_unit.old_unit),
    (Need.REACH, reach.asked_of, reach.reach),
    (Need.SAFE, safe.asked_of, safe.safe),
    (Need.DEAD, dead.asked_of, dead.dead),
    (Need.FREE, free.asked_of, free.free),
    (Need.MET, met.asked_of, met.met),
    (Need.SHUT, shut.asked_of, shut.shut),
    (Need.DRAIN, drain.asked_of, drain.drain),
    (Need.BETWEEN, between.asked_of, between.between),
    (Need.SOURCE, source.asked_of, source.source),
)


def needs(bench: Bench, verb: Verb, thing: Thing) -> Questions:
    """What is asked of an act on a thing; what the record rules out can't fail and is left out."""
    return tuple((need, ask) for need, asked_of, ask in ORDER if asked_of(bench, verb, thing))
