"""In which configurations each entry of a record is there at all.

A set of configurations is an integer, one bit each; what the bits mean is not this floor's business.
"""

from collections.abc import Callable, Iterable

from guidebuild.device.condition import Condition
from guidebuild.device.record import Device
from guidebuild.device.things import Link, Part, Store, Thing
from guidebuild.source.said import Said


class Presence:
    """`where[key]`: the configurations that have the thing; `everywhere`: all of them.

    A part needs its host, a link two of its ends, a store the part that it is in: what is mounted on nothing
    is not there. Hosts that go round in a circle count as there (the rule `record-impossible` tells them).
    """

    def __init__(
        self, device: Device, bits: Callable[[Condition | None], int], everywhere: int
    ) -> None:
        self.device = device
        self.everywhere = everywhere
        self._bits = bits
        self.where: dict[str, int] = {}
        things = device.things.values()
        for thing in things:
            if isinstance(thing, Part):
                self._find_part(thing.key)
        for thing in things:
            if not isinstance(thing, Part):
                self.where[thing.key] = self.both(self._own(thing), self._asked_for(thing))

    def of(self, ids: Iterable[Said]) -> list[tuple[str, int]]:
        """What ids mean, in order: keys, and where each is there. What is nowhere is left out."""
        names, where = self.device.names, self.where
        return [(key, where[key]) for said in ids for key in names.get(said.text, ()) if where[key]]

    def parts(self, ids: Iterable[Said]) -> list[tuple[str, int]]:
        """The same, parts only."""
        things = self.device.things
        return [one for one in self.of(ids) if isinstance(things[one[0]], Part)]

    def both(self, one: int, other: int) -> int:
        """Where both are. An object stays the same object where it can, so that it is known again."""
        if one is other or other is self.everywhere:
            return one
        return other if one is self.everywhere else one & other

    def _own(self, thing: Thing) -> int:
        return self.everywhere if thing.when is None else self._bits(thing.when)

    def _find_part(self, key: str) -> None:
        """Hosts before what they carry, without recursion: a record may be as deep as it likes."""
        waiting, asked = [key], {key}
        while waiting:
            part = self.device.part(waiting[-1])
            hosts = self._hosts(part)
            unknown = [one for one in hosts if one not in self.where and one not in asked]
            if unknown:
                asked.update(unknown)
                waiting.extend(unknown)
                continue
            waiting.pop()
            around = self._any(hosts) if part.host is not None else self.everywhere
            self.where[part.key] = self.both(self._own(part), around)

    def _hosts(self, part: Part) -> tuple[str, ...]:
        if part.host is None:
            return ()
        keys = self.device.names.get(part.host.text, ())
        return tuple(key for key in keys if isinstance(self.device.things[key], Part))

    def _any(self, keys: Iterable[str]) -> int:
        """Where at least one of these parts is there; a part still being asked for counts as there."""
        total = 0
        for key in keys:
            found = self.where.get(key, self.everywhere)
            if found is self.everywhere:
                return found
            total |= found
        return total

    def _asked_for(self, thing: Thing) -> int:
        match thing:
            case Link():
                return self._two(thing.ends)
            case Store(inside=Said() as inside):
                return self._any(self.device.names.get(inside.text, ()))
            case _:
                return self.everywhere

    def _two(self, ends: tuple[Said, ...]) -> int:
        """Where at least two ends are there (of a link with one end: that one)."""
        here = [self._any(self.device.names.get(said.text, ())) for said in ends]
        if all(one is self.everywhere for one in here) or len(here) < 2:
            return here[0] if len(here) == 1 else self.everywhere
        once = twice = 0
        for one in here:
            twice |= once & one
            once |= one
        return twice
