"""What must be off before a hand gets at a thing: what it lies behind, its own and inherited."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.between import Path
from guidebuild.device.place import Places
from guidebuild.device.presence import Presence
from guidebuild.device.things import Link, Part, Thing


@dataclass(frozen=True, slots=True)
class Cover:
    """`part` hides the thing in `path.where` while it is fitted and each of `path.parts` is, too."""

    part: str
    path: Path


@dataclass(frozen=True, slots=True)
class Level:
    """What one thing on the way down from a place says itself: `covers` hide all that is worked above it."""

    where: int
    covers: tuple[tuple[str, int], ...]
    passed: tuple[str, ...]  # the places on the way to this level, this one included


class Covers:
    """Asked once a thing, then known.

    A thing lies behind what it says itself and behind whatever the part where it is worked lies behind. What
    belongs to the covers of a part (the cover itself, what is on it, what ties it) does not lie behind them.
    """

    def __init__(self, places: Places) -> None:
        self.places = places
        self.presence = places.presence
        self._covers: dict[str, tuple[Cover, ...]] = {}
        self._levels: dict[str, tuple[Level, ...]] = {}

    def of(self, key: str) -> tuple[Cover, ...]:
        """Every cover that may hide the thing."""
        found = self._covers.get(key)
        if found is None:
            found = self._covers[key] = tuple(self._find(key))
        return found

    def behind(self, key: str) -> dict[str, int]:
        """The covers, and where the thing lies behind each, fitted or not."""
        thing = self.places.device.things[key]
        found = {
            cover: self.presence.both(self.presence.where[key], there)
            for cover, there in self._own(thing)
        }
        if thing.behind_inherits:
            for place, there in self.places.of(key):
                for level in self._below(place):
                    if not self._is_its_own(thing, level):
                        _add(found, level, self.presence.both(there, level.where), self.presence)
        if found and isinstance(thing, Part):  # what rides on a part does not hide it
            for rider in self.places.ends.between.hosts.carried(key):
                found.pop(rider, None)
        return {cover: where for cover, where in found.items() if where}

    def _own(self, thing: Thing) -> list[tuple[str, int]]:
        return self.presence.parts(thing.behind) if thing.behind else []

    def _below(self, place: str) -> tuple[Level, ...]:
        """The levels from a place down that say anything; the same for all that is worked there."""
        known = self._levels.get(place)
        if known is None:
            known = self._levels[place] = tuple(self._down(place))
        return known

    def _down(self, place: str) -> Iterator[Level]:
        waiting: list[tuple[int, tuple[str, ...]]] = [(self.presence.where[place], (place,))]
        while waiting:
            where, passed = waiting.pop(0)
            part = self.places.device.things[passed[-1]]
            own = self._own(part)
            if own:
                yield Level(where, tuple(own), passed)
            for further, there in self.places.of(part.key) if part.behind_inherits else ():
                both = self.presence.both(where, there)
                if both and further not in passed:
                    waiting.append((both, (*passed, further)))

    def _is_its_own(self, thing: Thing, level: Level) -> bool:
        """Whether a list of covers is one that the thing belongs to, and so is not hidden by."""
        covers = {cover for cover, _ in level.covers}
        if thing.key in covers or not covers.isdisjoint(level.passed[:-1]):
            return True
        if not isinstance(thing, Link):
            return False
        return any(key in covers for key, _ in self.places.ends.of(thing))

    def _find(self, key: str) -> Iterator[Cover]:
        between, both = self.places.ends.between, self.presence.both
        for cover, where in self.behind(key).items():
            for host, there in between.hosts.host(cover):
                for place, here in self.places.of(key):
                    together = both(both(where, there), here)
                    for path in between.paths(host, place) if together else ():
                        hides = both(together, path.where)
                        if hides and not path.apart:
                            yield Cover(cover, Path(hides, path.parts))


def _add(found: dict[str, int], level: Level, where: int, presence: Presence) -> None:
    for cover, there in level.covers:
        hides = presence.both(where, there)
        found[cover] = found[cover] | hides if found.get(cover) else hides
