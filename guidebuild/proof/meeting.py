"""Where two ways meet: what surely differs is a finding, and either may be true from there."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from guidebuild.proof.cells import Cells, Value
from guidebuild.proof.marks import OLD, marked
from guidebuild.proof.plain import IN


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


def sorted_out(differences: list[Difference]) -> Iterator[Difference]:
    """What is to be told: the states of things, and two units of one part where its state does not differ.

    Whether a new unit was fitted since is no difference. Where the units differ, both states read `in`.
    """
    apart: dict[str, int] = {}
    for one in differences:
        if marked(one.key) == one.key:
            apart[one.key] = apart.get(one.key, 0) | one.where
            yield one
    for one in differences:
        thing = marked(one.key)
        if thing != one.key and OLD in (one.first, one.second):
            where = one.where ^ (one.where & apart.get(thing, 0))
            if where:
                yield replace(one, first=IN, second=IN, where=where)
