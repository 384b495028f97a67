"""What lies between two parts: those that must be fitted for the two to move as one piece."""

from dataclasses import dataclass

from guidebuild.device.hosts import Hosts


@dataclass(frozen=True, slots=True)
class Path:
    """In `where` the two are one body while each of `parts` is fitted; never, if they are `apart`.

    Two parts are apart for good when they sit on different roots: a plug-in supply and the device.
    """

    where: int
    parts: tuple[str, ...]
    apart: bool = False


class Between:
    """Asked once a pair, then known."""

    def __init__(self, hosts: Hosts) -> None:
        self.hosts = hosts
        self._paths: dict[tuple[str, str], tuple[Path, ...]] = {}

    def paths(self, one: str, other: str) -> tuple[Path, ...]:
        """The way from one part to another, where both are there; disjoint configurations."""
        found = self._paths.get((one, other))
        if found is None:
            found = self._paths[one, other] = self._find(one, other)
        return found

    def _find(self, one: str, other: str) -> tuple[Path, ...]:
        both = self.hosts.presence.both
        paths = []
        for down in self.hosts.chains(one):
            for back in self.hosts.chains(other):
                where = both(down.where, back.where)
                if where:
                    paths.append(_path(where, down.parts, back.parts))
        return tuple(paths)


def _path(where: int, down: tuple[str, ...], back: tuple[str, ...]) -> Path:
    """Up to where the two chains meet; the part in which they meet need not be fitted to anything."""
    meet = next((part for part in down if part in back), None)
    if meet is None:
        return Path(where, (), apart=True)
    return Path(where, down[: down.index(meet)] + back[: back.index(meet)])
