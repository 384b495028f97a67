"""What may be worked only while something else is open or empty: guards and what they guard."""

from collections.abc import Iterator

from guidebuild.device.place import Places
from guidebuild.device.states import Kind
from guidebuild.device.things import Link, Store, Thing
from guidebuild.source.said import Said


def guards_of(thing: Thing) -> tuple[Said, ...]:
    """What a thing says that it guards."""
    return thing.guards if isinstance(thing, Link | Store) else ()


class Guarding:
    """The guards of a record, turned round once: from what is guarded to its guards."""

    def __init__(self, places: Places) -> None:
        self.places = places
        self.presence = places.presence
        self._over: dict[str, list[tuple[str, int]]] | None = None

    def over(self, key: str) -> list[tuple[str, int]]:
        """The guards of a thing, and where each of them guards it."""
        if self._over is None:
            self._over = {}
            for thing in self.places.device.things.values():
                if guards_of(thing):
                    for one, where in self._under(thing):
                        self._over.setdefault(one, []).append((thing.key, where))
        return self._over.get(key, [])

    def named(self, key: str) -> list[tuple[str, int]]:
        """What a guard names itself: each must be in before the guard is closed or filled."""
        thing = self.places.device.things[key]
        guard = self.presence.where[key]
        found = self.presence.of(guards_of(thing))
        return [(one, self.presence.both(guard, there)) for one, there in found if one != key]

    def _under(self, guard: Thing) -> Iterator[tuple[str, int]]:
        """All that a guard guards: of a part, also what is on it and what is worked there."""
        exempt = {guard.key, *self._ways_in_and_out(guard)}
        for named, where in self.named(guard.key):
            for one, there in self._with_what_is_on_it(named):
                both = self.presence.both(where, there)
                if both and one not in exempt:
                    yield one, both

    def _with_what_is_on_it(self, key: str) -> Iterator[tuple[str, int]]:
        yield key, self.presence.where[key]
        if self.places.device.things[key].kind is not Kind.PART:
            return
        yield from self.places.at(key)
        hosts = self.places.ends.between.hosts
        for rider in hosts.carried(key):
            where = hosts.on(rider, key)
            yield rider, where
            for one, there in self.places.at(rider):
                yield one, self.presence.both(where, there)

    def _ways_in_and_out(self, guard: Thing) -> Iterator[str]:
        """A drain plug is worked while the oil is in: that is what it is for."""
        if isinstance(guard, Store):
            ways = guard.filled_by if guard.through is None else (guard.through, *guard.filled_by)
            yield from (key for key, _ in self.presence.of(ways))
