"""The value of a thing in all configurations at once does what one value a configuration would do."""

from hypothesis import given
from hypothesis import strategies as st

from guidebuild.proof.cells import Cells, Partition, Value

SIZE = 7
EVERYWHERE = (1 << SIZE) - 1

states = st.integers(1, 63)
bits = st.integers(0, EVERYWHERE)
plain = st.lists(st.sampled_from([1, 2, 4, 5, 16, 36]), min_size=SIZE, max_size=SIZE)


def packed(values: list[int]) -> Value:
    """One set of states a configuration, as a value."""
    cells: dict[int, int] = {}
    for number, value in enumerate(values):
        cells[value] = cells.get(value, 0) | 1 << number
    return next(iter(cells)) if len(cells) == 1 else Partition(cells)


def unpacked(cells: Cells, value: Value) -> list[int]:
    """The other way round; each configuration is in just one cell."""
    found = [0] * SIZE
    for states_, where in cells.of(value):
        for number in range(SIZE):
            if where >> number & 1:
                assert not found[number]
                found[number] = states_
    return found


def where(holds: list[bool]) -> int:
    return sum(1 << number for number, one in enumerate(holds) if one)


def inside(number: int, some: int) -> bool:
    return bool(some >> number & 1)


@given(plain, states)
def test_surely_and_perhaps(values: list[int], asked: int) -> None:
    cells = Cells(EVERYWHERE)
    value = packed(values)
    for _ in range(2):  # the second answer is remembered
        assert cells.surely(value, asked) == where([not one & ~asked for one in values])
        assert cells.perhaps(value, asked) == where([bool(one & asked) for one in values])


@given(plain, bits, states)
def test_put_and_change(values: list[int], some: int, to: int) -> None:
    cells = Cells(EVERYWHERE)
    after = [to if inside(n, some) else one for n, one in enumerate(values)]
    for _ in range(2):
        assert unpacked(cells, cells.put(packed(values), some, to)) == after
    widened = cells.change(packed(values), some, lambda cell: cell | to)
    assert unpacked(cells, widened) == [
        one | to if inside(n, some) else one for n, one in enumerate(values)
    ]


@given(plain, plain, bits)
def test_select_and_either(values: list[int], others: list[int], some: int) -> None:
    cells, one, other = Cells(EVERYWHERE), packed(values), packed(others)
    pairs = list(enumerate(zip(values, others, strict=True)))
    assert unpacked(cells, cells.select(one, other, some)) == [
        b if inside(n, some) else a for n, (a, b) in pairs
    ]
    assert unpacked(cells, cells.either(one, other, some)) == [
        a | b if inside(n, some) else a for n, (a, b) in pairs
    ]


@given(plain, plain)
def test_within_and_differ(values: list[int], others: list[int]) -> None:
    cells, one, other = Cells(EVERYWHERE), packed(values), packed(others)
    pairs = list(zip(values, others, strict=True))
    assert cells.within(one, other) == where([not a & ~b for a, b in pairs])
    assert cells.differ(one, other) == where([a != b for a, b in pairs])


@given(plain, bits, states)
def test_a_value_is_never_changed_in_place(values: list[int], some: int, to: int) -> None:
    cells, value = Cells(EVERYWHERE), packed(values)
    cells.put(value, some, to)
    cells.change(value, some, lambda cell: to)
    assert unpacked(cells, value) == values


def test_what_moves_as_a_whole_keeps_its_object() -> None:
    some = 0b0101_0101
    cells = Cells(0b1111_1111)
    value = cells.put(cells.put(1, some, 4), some, 2)
    assert isinstance(value, Partition)
    assert value[2] is some
    assert cells.put(1, some, 4) is cells.put(1, some, 4)  # things under one condition share it
