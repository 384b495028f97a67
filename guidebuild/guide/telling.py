"""A set of configurations in the options' own words."""

from typing import Protocol

from guidebuild.guide.merging import Axis
from guidebuild.source.finding import Told


class Numbered(Protocol):
    """What telling needs to know of the configurations."""

    @property
    def axes(self) -> tuple[Axis, ...]: ...
    @property
    def total(self) -> int: ...
    @property
    def everywhere(self) -> int: ...
    def leaf(self, axis: int, classes: tuple[int, ...]) -> int: ...


def tell(numbered: Numbered, where: int, among: int) -> Told:
    """Stub until the covering condition is in."""
    return Told(
        "" if where == among else "in some configurations", where.bit_count(), numbered.total
    )
