"""One act on one thing, with all that the record settles beforehand: what to ask of it, what follows it."""

from guidebuild.device.acts import Verb
from guidebuild.device.things import Connector, Hole, Part, Thing
from guidebuild.proof.bench import Bench
from guidebuild.proof.effects.change import change, ends
from guidebuild.proof.effects.order import Effects, effects
from guidebuild.proof.needs.here import starts
from guidebuild.proof.needs.order import Questions, needs
from guidebuild.proof.plain import ANY


class Deed:
    """`starts`: the states that it starts from, `never` the others; `needs` beyond that, and `effects`, each in order.

    `end`: the state that it ends in where it has no other effect, else None. `sources`: it may take a source.
    `twin`: a number that screws of a group share which nothing in the record tells apart; None: moved singly.
    """

    __slots__ = (
        "effects", "end", "key", "needs", "never", "sources", "starts", "there", "thing", "twin", "verb",
    )  # fmt: skip

    def __init__(self, bench: Bench, verb: Verb, thing: Thing, like: "Deed | None" = None) -> None:
        self.verb = verb
        self.key = thing.key
        self.thing = thing
        self.there = bench.layout.presence.where[thing.key]
        self.starts = starts(thing.kind, verb, isinstance(thing, Hole) and thing.captive)
        self.never = ANY & ~self.starts
        if like is None:
            self.needs: Questions = needs(bench, verb, thing)
            self.effects: Effects = effects(bench, verb, thing)
        else:
            self.needs, self.effects = like.needs, like.effects
        self.sources = isinstance(thing, Part) or (isinstance(thing, Connector) and thing.source)
        measured = isinstance(thing, Hole) and verb in (Verb.TIGHTEN, Verb.REFIT)
        plain = self.effects == (change,) and not (thing.single_use or measured or self.sources)
        self.end = ends(thing.kind, verb) if plain else None
        self.twin: int | None = None


class Deeds:
    """Made once a thing and verb."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench
        self._known: dict[tuple[str, str], Deed] = {}
        self._firsts: dict[tuple[str, str], list[Deed]] = {}

    def of(self, verb: Verb, thing: Thing) -> Deed:
        """The deed, the same object again."""
        slot = (verb.value, thing.key)
        known = self._known.get(slot)
        if known is None:
            known = self._known[slot] = self._make(verb, thing)
        return known

    def _make(self, verb: Verb, thing: Thing) -> Deed:
        """Of screws that nothing tells apart, only the first is looked into."""
        if not isinstance(thing, Hole) or thing.guards or _is_named(self._bench, thing):
            return Deed(self._bench, verb, thing)
        firsts = self._firsts.setdefault((verb.value, thing.group), [])
        for first in firsts:
            if _alike(self._bench, first.thing, thing):
                deed = Deed(self._bench, verb, thing, first)
                deed.twin = first.twin
                return deed
        deed = Deed(self._bench, verb, thing)
        deed.twin = len(firsts)
        firsts.append(deed)
        return deed


def _is_named(bench: Bench, hole: Hole) -> bool:
    """Whether a store is filled or emptied by just this screw."""
    stores = bench.layout.stores
    return hole.key in stores.filled_by or hole.key in stores.emptied_by


_DECIDE = ("ends", "when", "at", "behind", "behind_inherits", "captive", "single_use", "torque")


def _alike(bench: Bench, one: Thing, other: Thing) -> bool:
    """Whether the record decides all that is asked of two screws of a group, and becomes of them, alike."""
    over = bench.layout.guarding.over
    return over(one.key) == over(other.key) and all(
        getattr(one, name) == getattr(other, name) for name in _DECIDE
    )
