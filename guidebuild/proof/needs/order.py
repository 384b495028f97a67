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
from guidebuild.proof.watch import Watch, Watched

Question: TypeAlias = Callable[[Asking], Lack | None]
Questions: TypeAlias = tuple[tuple[Need, Question], ...]
AskedOf: TypeAlias = Callable[[Kind, Verb], bool]
WatchedFor: TypeAlias = Callable[[Bench, Verb, Thing], Watched]

ORDER: tuple[tuple[Need, AskedOf, WatchedFor, Question], ...] = (
    (Need.OLD_UNIT, old_unit.asked_of, old_unit.watched, old_unit.old_unit),
    (Need.REACH, reach.asked_of, reach.watched, reach.reach),
    (Need.SAFE, safe.asked_of, safe.watched, safe.safe),
    (Need.DEAD, dead.asked_of, dead.watched, dead.dead),
    (Need.FREE, free.asked_of, free.watched, free.free),
    (Need.MET, met.asked_of, met.watched, met.met),
    (Need.SHUT, shut.asked_of, shut.watched, shut.shut),
    (Need.DRAIN, drain.asked_of, drain.watched, drain.drain),
    (Need.BETWEEN, between.asked_of, between.watched, between.between),
    (Need.SOURCE, source.asked_of, source.watched, source.source),
)


@cache
def asked(kind: Kind, verb: Verb) -> tuple[tuple[Need, WatchedFor, Question], ...]:
    """What is asked of an act on things of a kind."""
    return tuple((need, watched, ask) for need, of, watched, ask in ORDER if of(kind, verb))


def needs(bench: Bench, verb: Verb, thing: Thing) -> tuple[Questions, Watch]:
    """What is asked of an act on a thing, and what to watch to know whether any of it may fail.

    A need for which there is nothing to watch can't fail, and is left out.
    """
    questions: list[tuple[Need, Question]] = []
    watch: list[tuple[str, int]] = []
    for need, watched, ask in asked(thing.kind, verb):
        pairs = watched(bench, verb, thing)
        if pairs:
            questions.append((need, ask))
            watch.extend(pairs)
    return tuple(questions), tuple(watch)
