"""Which options decide: two sets of combinations are smeared over an option, and if they stay apart it does not.

Sets here are over the full product of the axes, the last axis turning fastest.
"""

from collections.abc import Iterable

from guidebuild.guide.numbering import Digits


def smear(digits: Digits, axis: int, cells: int) -> int:
    """The combinations that are in the set after some change of this one option."""
    radix, stride = digits.radix[axis], digits.stride[axis]
    first = digits.pattern(axis, (0,))
    at_zero = 0
    for digit in range(radix):
        at_zero |= (cells >> digit * stride) & first
    spread = at_zero
    for digit in range(1, radix):
        spread |= at_zero << digit * stride
    return spread


def deciding(digits: Digits, on: int, off: int) -> tuple[tuple[int, ...], int, int]:
    """The axes needed to tell `on` from `off`, and both sets smeared over all others.

    Tried in two orders; the one that leaves fewer combinations is taken.
    """
    axes = [axis for axis, radix in enumerate(digits.radix) if radix > 1]
    tries = (_keep(digits, order, on, off) for order in (axes, axes[::-1]))
    return min(tries, key=lambda found: _cells(digits, found[0]))


def _keep(
    digits: Digits, order: Iterable[int], on: int, off: int
) -> tuple[tuple[int, ...], int, int]:
    kept = []
    for axis in order:
        wide_on, wide_off = smear(digits, axis, on), smear(digits, axis, off)
        if wide_on & wide_off:
            kept.append(axis)
        else:
            on, off = wide_on, wide_off
    return tuple(sorted(kept)), on, off


def _cells(digits: Digits, axes: Iterable[int]) -> int:
    cells = 1
    for axis in axes:
        cells *= digits.radix[axis]
    return cells


def fold(digits: Digits, axes: tuple[int, ...], cells: int) -> int:
    """A set smeared over all but `axes`, as a set over these alone."""
    small = Digits.of(tuple(digits.radix[axis] for axis in axes))
    packed = cells.to_bytes((digits.size + 7) // 8, "little")
    folded = 0
    for number in range(small.size):
        at = sum(
            small.digit(place, number) * digits.stride[axis] for place, axis in enumerate(axes)
        )
        if packed[at >> 3] >> (at & 7) & 1:
            folded |= 1 << number
    return folded
