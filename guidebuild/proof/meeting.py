"""Where two ways meet: what surely differs is a finding, and either may be true from there."""

from dataclasses import dataclass

from guidebuild.proof.cells import Cells, Value


@dataclass(frozen=True, slots=True)
class Difference:
    """A thing that is surely in `first` after one way and surely in `second` after the other."""

    key: str
    first: int
    second: int
    where: int


def meet(
    cells: Cells, one: dict[str, Value], other: dict[str, Value], both: int, other_only: int
) -> tuple[dict[str, Value], list[Difference]]:
    """The values after two ways: `both` ways lead here in these configurations, or just the other.

    Elsewhere the first way's values stand.
    """
    met = dict(one)
    differences: list[Difference] = []
    for key, value in one.items():
        second = other[key]
        if value is second:
            continue
        if both:
            differences.extend(_differ(cells, key, value, second, both))
        after = cells.select(value, second, other_only)
        met[key] = cells.either(after, second, both)
    return met, differences


def _differ(cells: Cells, key: str, one: Value, other: Value, where: int) -> list[Difference]:
    found = []
    for first, here in cells.of(one):
        for second, there in cells.of(other):
            bits = here & there & where
            if bits and not first & second:
                found.append(Difference(key, first, second, bits))
    return found
