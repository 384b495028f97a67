"""A set of configurations in the options' own words: `only when revision = b`, `except when supplied = bare`."""

from collections.abc import Sequence
from typing import Protocol

from guidebuild.guide.boxes import Box, cover, grow
from guidebuild.guide.merging import Axis
from guidebuild.guide.numbering import Digits
from guidebuild.guide.smearing import deciding, fold
from guidebuild.source.finding import Told

_MOST_AXES = 8
_MOST_CELLS = 4096
_MOST_BOXES = 3
_MOST_COMPARISONS = 6

Rows = tuple[tuple[tuple[str, tuple[str, ...]], ...], ...]


class Numbered(Protocol):
    """What telling needs to know of the configurations."""

    @property
    def axes(self) -> tuple[Axis, ...]:
        """The options with their classes."""

    @property
    def digits(self) -> Digits:
        """The full product of the axes."""

    @property
    def total(self) -> int:
        """How many configurations there are."""

    def spread(self, cells: int) -> int:
        """A set of configurations as a set over the full product."""


def tell(numbered: Numbered, where: int, among: int) -> Told:
    """`where` against the rest of `among`; what is not in `among` may be said or not, as is shorter."""
    on, off = where & among, among ^ (where & among)
    count = on.bit_count()
    if not on or not off:
        return Told("", count, numbered.total)
    axes, wide_on, wide_off = deciding(numbered.digits, numbered.spread(on), numbered.spread(off))
    asked = [numbered.axes[axis] for axis in axes]
    small = Digits.of(tuple(numbered.digits.radix[axis] for axis in axes))
    if len(axes) > _MOST_AXES or small.size > _MOST_CELLS:
        return _too_many(numbered, count, axes, (wide_on, wide_off))
    folded_on = fold(numbered.digits, axes, wide_on)
    folded_off = fold(numbered.digits, axes, wide_off)
    only = cover(small, folded_on, folded_off)
    but = cover(small, folded_off, folded_on)
    if _cost(small, but) < _cost(small, only) and _is_short(small, but):
        return Told(f"except when {_words(small, asked, but)}", count, numbered.total)
    if _is_short(small, only):
        return Told(f"only when {_words(small, asked, only)}", count, numbered.total)
    return _long(numbered, count, asked, small, only)


def _cost(digits: Digits, boxes: Sequence[Box]) -> tuple[int, int]:
    return len(boxes), sum(len(box.asked(digits)) for box in boxes)


def _is_short(digits: Digits, boxes: Sequence[Box]) -> bool:
    number, comparisons = _cost(digits, boxes)
    return number <= _MOST_BOXES and comparisons <= _MOST_COMPARISONS


def _words(digits: Digits, axes: Sequence[Axis], boxes: Sequence[Box]) -> str:
    told = [_box(digits, axes, box) for box in boxes]
    if len(told) == 1:
        return told[0]
    return " or ".join(f"({one})" if " and " in one else one for one in told)


def _box(digits: Digits, axes: Sequence[Axis], box: Box) -> str:
    return " and ".join(_comparison(axes[at], box.classes[at]) for at in box.asked(digits))


def _comparison(axis: Axis, classes: tuple[int, ...]) -> str:
    """As an author writes it: `=`, `!=` or `in (...)`, whichever names fewer values."""
    inside = _values(axis, classes)
    outside = _values(axis, tuple(n for n in range(len(axis.classes)) if n not in classes))
    if len(inside) == 1:
        return f"{axis.option} = {inside[0]}"
    if len(outside) == 1:
        return f"{axis.option} != {outside[0]}"
    return f"{axis.option} in ({', '.join(inside)})"


def _values(axis: Axis, classes: tuple[int, ...]) -> tuple[str, ...]:
    return tuple(value for number in classes for value in axis.classes[number])


def _only_counted(numbered: Numbered, count: int, axes: Sequence[Axis]) -> str:
    names = ", ".join(axis.option for axis in axes)
    return f"only in {count} of {numbered.total} configurations, which {names} decide"


def _too_many(numbered: Numbered, count: int, axes: tuple[int, ...], sets: tuple[int, int]) -> Told:
    """Not folded: the count, the options that decide, and one box, grown among all combinations."""
    on, off = sets
    box = grow(numbered.digits, (on & -on).bit_length() - 1, range(len(numbered.axes)), off)
    counted = _only_counted(numbered, count, [numbered.axes[axis] for axis in axes])
    words = f"{counted}; for one, when {_box(numbered.digits, numbered.axes, box)}"
    return Told(words, count, numbered.total)


def _long(
    numbered: Numbered, count: int, axes: Sequence[Axis], digits: Digits, boxes: Sequence[Box]
) -> Told:
    """The count, the largest box, the options that decide; all of it in `full`."""
    largest = max(boxes, key=lambda box: box.cells.bit_count())
    words = f"{_only_counted(numbered, count, axes)}; for one, when {_box(digits, axes, largest)}"
    full: Rows = tuple(
        tuple((axes[at].option, _values(axes[at], box.classes[at])) for at in box.asked(digits))
        for box in boxes
    )
    return Told(words, count, numbered.total, full)
