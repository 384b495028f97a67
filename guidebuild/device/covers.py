"""What must be off before a hand gets at a thing: what it lies behind, its own and inherited."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.between import Path
from guidebuild.device.place import Places
from guidebuild.device.things import Link, Part
from guidebuild.source.said import Said


@dataclass(frozen=True, slots=True)
class Cover:
    """`part` hides the thing in `path.where` while it is fitted and each of `path.parts` is, too."""

    part: str
    path: Path


class Covers:
    """Asked once a thing, then known.

    A thing lies behind what it says itself and behind whatever the part where it is worked lies behind. What
    belongs to the covers of a part (the cover itself, what is on it, what ties it) does not lie behind them.
    """

    def __init__(self, places: Places) -> None:
        self.places = places
        self.presence = places.presence
        self._covers: dict[str, tuple[Cover, ...]] = {}

    def of(self, key: str) -> tuple[Cover, ...]:
        """Every cover that may hide the thing."""
        found = self._covers.get(key)
        if found is None:
            found = self._covers[key] = tuple(self._find(key))
        return found

    def behind(self, key: str) -> list[tuple[str, int]]:
        """The covers, and where the thing lies behind each, fitted or not."""
        thing = self.places.device.things[key]
        on_it = self.places.ends.between.hosts.carried(key) if isinstance(thing, Part) else ()
        ends = thing.ends if isinstance(thing, Link) else ()
        found: dict[str, int] = {}
        waiting: list[tuple[int, tuple[str, ...]]] = [(self.presence.where[key], (key,))]
        while waiting:
            where, chain = waiting.pop(0)
            level = self.places.device.things[chain[-1]]
            own = self.presence.parts(level.behind)
            if not self._is_its_own([cover for cover, _ in own], chain, ends):
                for cover, there in own:
                    hides = self.presence.both(where, there)
                    if hides and cover not in on_it:
                        found[cover] = found[cover] | hides if cover in found else hides
            if level.behind_inherits:
                for place, there in self.places.of(chain[-1]):
                    further = self.presence.both(where, there)
                    if further and place not in chain:
                        waiting.append((further, (*chain, place)))
        return list(found.items())

    def _is_its_own(
        self, covers: list[str], chain: tuple[str, ...], ends: tuple[Said, ...]
    ) -> bool:
        """Whether a list of covers is one that the thing belongs to, and so is not hidden by."""
        if any(part in covers for part in chain):
            return True
        if len(chain) == 1:
            return False
        return any(key in covers for key, _ in self.presence.parts(ends))

    def _find(self, key: str) -> Iterator[Cover]:
        between = self.places.ends.between
        for cover, where in self.behind(key):
            for host, there in between.hosts.host(cover):
                for place, here in self.places.of(key):
                    both = self.presence.both(self.presence.both(where, there), here)
                    for path in between.paths(host, place) if both else ():
                        hides = self.presence.both(both, path.where)
                        if hides and not path.apart:
                            yield Cover(cover, Path(hides, path.parts))
