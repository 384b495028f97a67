"""All that the walks found, each mistake once in each configuration, however many ways show it."""

from collections.abc import Hashable, Iterable
from dataclasses import dataclass, field, replace
from typing import TypeVar

from guidebuild.proof.mistake import Ending, Parting, Unmet

Found = TypeVar("Found", Unmet, Parting, Ending)


@dataclass(slots=True)
class Findings:
    """Add in the order of the walks: what came before is not told again."""

    unmet: list[Unmet] = field(default_factory=list)
    partings: list[Parting] = field(default_factory=list)
    endings: list[Ending] = field(default_factory=list)
    _where: dict[Hashable, int] = field(default_factory=dict)

    def add(
        self,
        unmet: Iterable[Unmet] = (),
        partings: Iterable[Parting] = (),
        endings: Iterable[Ending] = (),
    ) -> None:
        """Keep what is new of these, in the configurations in which it is new."""
        self.unmet.extend(self._new(unmet))
        self.partings.extend(self._new(partings))
        self.endings.extend(self._new(endings))

    def _new(self, found: Iterable[Found]) -> list[Found]:
        fresh = []
        for one in found:
            name = _name(one)
            known = self._where.get(name, 0)
            new = one.where ^ (one.where & known)
            if new:
                self._where[name] = known | new
                fresh.append(one if new == one.where else _only(one, new))
        return fresh


def _only(one: Found, where: int) -> Found:
    match one:
        case Unmet():
            return one.only(where)
        case Parting():
            return replace(one, where=where)
        case Ending():
            return replace(one, where=where)


def _name(one: Unmet | Parting | Ending) -> Hashable:
    """What makes two findings the same one."""
    match one:
        case Unmet():
            return one.need, one.thing, one.step.id, one.span.sort_key
        case Parting():
            return "parting", one.thing, one.step.id, one.span.sort_key
        case Ending():
            return one.thing, one.because
