"""Where the hand goes to work a thing."""

from guidebuild.device.ends import Ends
from guidebuild.device.record import Device
from guidebuild.device.things import Connector, Link, Part, Store, Thing
from guidebuild.source.said import Said


class Places:
    """Asked once a thing, then known. A place is a part; the base and the power switch have none."""

    def __init__(self, ends: Ends) -> None:
        self.ends = ends
        self.presence = ends.between.hosts.presence
        self._places: dict[str, tuple[tuple[str, int], ...]] = {}
        self._at: dict[str, list[tuple[str, int]]] | None = None

    @property
    def device(self) -> Device:
        """The record that is asked."""
        return self.presence.device

    def of(self, key: str) -> tuple[tuple[str, int], ...]:
        """Parts, and in which configurations each is the place; disjoint."""
        found = self._places.get(key)
        if found is None:
            found = self._places[key] = tuple(self._find(self.device.things[key]))
        return found

    def at(self, part: str) -> list[tuple[str, int]]:
        """Links and stores whose place is this part, and where it is."""
        if self._at is None:
            self._at = {}
            for thing in self.device.things.values():
                if not isinstance(thing, Part):
                    for place, where in self.of(thing.key):
                        self._at.setdefault(place, []).append((thing.key, where))
        return self._at.get(part, [])

    def _find(self, thing: Thing) -> list[tuple[str, int]]:
        """The first that is there of: what `at` says, then the usual place of its kind."""
        left = self.presence.where[thing.key]
        places = []
        for key, there in self.presence.parts(_candidates(thing)):
            where = self.presence.both(left, there)
            if where:
                places.append((key, where))
                left = 0 if where is left else left ^ where
        return places


def _candidates(thing: Thing) -> tuple[Said, ...]:
    """The usual place of each kind, after `at`."""
    said = () if thing.at is None else (thing.at,)
    match thing:
        case Connector():  # worked at the last part that it joins
            return said + thing.ends[::-1]
        case Link():
            return said + thing.ends
        case Part():
            return said if thing.host is None else (*said, thing.host)
        case Store():
            return said if thing.inside is None else (*said, thing.inside)
        case _:
            return said
