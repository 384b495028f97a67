"""One act on one thing, with all that the record settles beforehand: what to ask of it, what follows it."""

from operator import attrgetter

from guidebuild.device.acts import Verb
from guidebuild.device.things import Connector, Hole, Part, Thing
from guidebuild.proof.bench import Bench
from guidebuild.proof.effects.change import change, end
from guidebuild.proof.effects.leaving import bring_over
from guidebuild.proof.effects.order import Effects, effects
from guidebuild.proof.needs.here import starts
from guidebuild.proof.needs.order import Questions, needs
from guidebuild.proof.plain import ANY
from guidebuild.proof.watch import Watch

_PLAIN: tuple[Effects, ...] = ((change,), (bring_over, change))


class Deed:
    """`starts`: the states that it starts from, `never` the others; `needs` beyond that, `effects`, each in order.

    `watch`: what could stand in its way. `end`: the state that it ends in; `plain`: that is its one effect on
    what is not on an old unit. `source`: it is one; `sources`: it may take one.
    `twin`: a number that screws of a group share which nothing in the record tells apart; None: moved singly.
    """

    __slots__ = (
        "effects", "end", "key", "needs", "never", "plain", "source", "sources", "starts", "there", "thing", "twin",
        "verb", "watch",
    )  # fmt: skip

    def __init__(self, bench: Bench, verb: Verb, thing: Thing, like: "Deed | None" = None) -> None:
        self.verb = verb
        self.key = thing.key
        self.thing = thing
        self.there = bench.layout.presence.where[thing.key]
        self.starts = starts(thing.kind, verb, isinstance(thing, Hole) and thing.captive)
        self.never = ANY & ~self.starts
        if like is None:
            self.needs: Questions
            self.watch: Watch
            self.needs, self.watch = needs(bench, verb, thing)
            self.effects: Effects = effects(bench, verb, thing)
        else:
            self.needs, self.watch, self.effects = like.needs, like.watch, like.effects
        self.source = isinstance(thing, Connector) and thing.source
        self.sources = self.source or isinstance(thing, Part)
        self.end = end(thing, verb)
        self.plain = self.effects in _PLAIN
        self.twin: int | None = None


class Deeds:
    """Made once a thing and verb."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench
        self._known: dict[tuple[Verb, str], Deed] = {}
        self._firsts: dict[str, list[Hole]] = {}
        self._twins: dict[str, tuple[Hole, int]] = {}

    def of(self, verb: Verb, thing: Thing) -> Deed:
        """The deed, the same object again."""
        slot = (verb, thing.key)
        known = self._known.get(slot)
        if known is None:
            known = self._known[slot] = self._make(verb, thing)
        return known

    def _make(self, verb: Verb, thing: Thing) -> Deed:
        """Of screws that nothing tells apart, only the first is looked into."""
        twin = self._twin(thing) if isinstance(thing, Hole) else None
        if twin is None:
            return Deed(self._bench, verb, thing)
        first, number = twin
        like = None if first is thing else self.of(verb, first)
        deed = Deed(self._bench, verb, thing, like)
        deed.twin = number
        return deed

    def _twin(self, hole: Hole) -> tuple[Hole, int] | None:
        """The first screw of its group that it is like, and that one's number; None: it is moved singly."""
        known = self._twins.get(hole.key)
        if known is None and not hole.guards and not _is_named(self._bench, hole):
            firsts = self._firsts.setdefault(hole.group, [])
            alike = (n for n, one in enumerate(firsts) if _alike(self._bench, one, hole))
            number = next(alike, len(firsts))
            if number == len(firsts):
                firsts.append(hole)
            known = self._twins[hole.key] = firsts[number], number
        return known


def _is_named(bench: Bench, hole: Hole) -> bool:
    """Whether a store is filled or emptied by just this screw."""
    stores = bench.layout.stores
    return hole.key in stores.filled_by or hole.key in stores.emptied_by


_decisive = attrgetter(
    "ends", "when", "at", "behind", "behind_inherits", "captive", "single_use", "torque"
)


def _alike(bench: Bench, one: Hole, other: Hole) -> bool:
    """Whether the record decides all that is asked of two screws of a group, and becomes of them, alike."""
    over = bench.layout.guarding.over
    return over(one.key) == over(other.key) and _decisive(one) == _decisive(other)
