"""A thing's value in every configuration at once, and what can be asked of it and done to it.

A value is one set of states that is true everywhere (an integer of State bits), or a Partition
{set of states: configurations}. Values are never changed in place, so whoever holds one may keep it, and
things that share a value share what is worked out of it: four screws of a group are moved once.
"""

from collections.abc import Callable, Iterator
from typing import TypeAlias


class Partition(dict[int, int]):
    """Sets of states with the configurations in which each is true; at least two of them.

    `asked` and `moved` remember answers, so that what shares the value shares the work.
    """

    __slots__ = ("asked", "moved")

    def __init__(self, cells: dict[int, int]) -> None:
        super().__init__(cells)
        self.asked: dict[int, int] = {}
        self.moved: dict[tuple[int, int], tuple[int, Value]] = {}


Value: TypeAlias = int | Partition


class Cells:
    """The operations, for one set of configurations. `everywhere` is compared by identity."""

    __slots__ = ("_apart", "everywhere")

    def __init__(self, everywhere: int) -> None:
        self.everywhere = everywhere
        self._apart: dict[tuple[int, int, int], tuple[int, Value]] = {}

    def of(self, value: Value) -> Iterator[tuple[int, int]]:
        """Each set of states and where it is true."""
        if isinstance(value, int):
            yield value, self.everywhere
        else:
            yield from value.items()

    def surely(self, value: Value, states: int) -> int:
        """Where the thing is in one of `states`, whatever is open."""
        if isinstance(value, int):
            return 0 if value & ~states else self.everywhere
        found = value.asked.get(states)
        if found is None:
            found = _union(bits for cell, bits in value.items() if not cell & ~states)
            value.asked[states] = found
        return found

    def perhaps(self, value: Value, states: int) -> int:
        """Where the thing may be in one of `states`."""
        if isinstance(value, int):
            return self.everywhere if value & states else 0
        found = value.asked.get(~states)
        if found is None:
            found = _union(bits for cell, bits in value.items() if cell & states)
            value.asked[~states] = found
        return found

    def put(self, value: Value, where: int, states: int) -> Value:
        """The value after the thing came into `states` in `where`."""
        if where is self.everywhere:
            return states
        if not where or value == states:
            return value
        if isinstance(value, int):
            return self._two(value, states, where)
        known = value.moved.get((states, id(where)))
        if known is None:  # `where` is kept with the answer, so that its id stays its own
            known = where, self._move(value, where, lambda cell: states)
            value.moved[states, id(where)] = known
        return known[1]

    def change(self, value: Value, where: int, to: Callable[[int], int]) -> Value:
        """The value after each set in `where` became `to(set)`."""
        if not where:
            return value
        if isinstance(value, int):
            return self.put(value, where, to(value))
        return self._move(value, where, to)

    def select(self, value: Value, other: Value, where: int) -> Value:
        """`other` in `where`, `value` elsewhere."""
        if value is other or not where:
            return value
        if where is self.everywhere or where == self.everywhere:
            return other
        return self._join(value, other, where, lambda one, two: two)

    def either(self, value: Value, other: Value, where: int) -> Value:
        """What may be true where two ways met: in `where` both values' states, elsewhere `value`."""
        if value is other or not where:
            return value
        return self._join(value, other, where, lambda one, two: one | two)

    def differ(self, value: Value, other: Value) -> int:
        """Where the two are not the same set of states."""
        if value is other:
            return 0
        alike = 0
        for cell, bits in self.of(value):
            if isinstance(other, int):
                alike |= bits if cell == other else 0
            else:
                alike |= bits & other.get(cell, 0)
        return self.everywhere ^ alike

    def within(self, value: Value, other: Value) -> int:
        """Where all that may be true of `value` may be true of `other`, too."""
        if value is other:
            return self.everywhere
        if isinstance(value, int) and isinstance(other, int):
            return 0 if value & ~other else self.everywhere
        found = 0
        for cell, bits in self.of(value):
            for wide, there in self.of(other):
                if not cell & ~wide:
                    found |= bits & there
        return found

    def _two(self, value: int, states: int, where: int) -> Value:
        """A constant that is split: the same object again for the same split."""
        key = (value, states, id(where))
        known = self._apart.get(key)
        if known is None:
            made = Partition({value: self.everywhere ^ where, states: where})
            known = self._apart[key] = (where, self._tidy(made))
        return known[1]

    def _move(self, value: Partition, where: int, to: Callable[[int], int]) -> Value:
        cells: dict[int, int] = {}
        for cell, bits in value.items():
            moved = bits if bits is where else bits & where
            after = to(cell) if moved else cell
            if after == cell:
                _add(cells, cell, bits)
            elif moved is bits or moved == bits:
                _add(cells, after, bits)
            else:
                _add(cells, cell, bits ^ moved)
                _add(cells, after, moved)
        return self._tidy(cells)

    def _join(
        self, value: Value, other: Value, where: int, both: Callable[[int, int], int]
    ) -> Value:
        """Cell by cell: `both` in `where`, `value` elsewhere."""
        cells: dict[int, int] = {}
        for cell, bits in self.of(value):
            inside = bits & where
            if inside != bits:
                _add(cells, cell, bits ^ inside)
            for cell_too, bits_too in self.of(other) if inside else ():
                common = inside & bits_too
                if common:
                    _add(cells, both(cell, cell_too), common)
        return self._tidy(cells)

    def _tidy(self, cells: dict[int, int]) -> Value:
        """One cell only is a constant."""
        if len(cells) == 1:
            return next(iter(cells))
        return cells if isinstance(cells, Partition) else Partition(cells)


def _add(cells: dict[int, int], states: int, bits: int) -> None:
    before = cells.get(states)
    cells[states] = bits if before is None else before | bits


def _union(all_bits: Iterator[int]) -> int:
    """A single set stays the object that it is."""
    total = 0
    for bits in all_bits:
        total = total | bits if total else bits
    return total
