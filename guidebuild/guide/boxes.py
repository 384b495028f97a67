"""A set of combinations as few boxes: in a box each option is in some of its classes, whatever the others are.

Boxes are grown from seeds as far as they touch nothing that is `off`, then picked greedily, then the
redundant ones are dropped. Not always the fewest possible, but each of them is as wide as it can be.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from guidebuild.guide.numbering import Digits

_SEEDS = 48  # tried in a round; the sets that people write need one or two


@dataclass(frozen=True, slots=True)
class Box:
    """`classes[i]`: those that axis i may be in; `cells`: the combinations inside."""

    classes: tuple[tuple[int, ...], ...]
    cells: int

    def asked(self, digits: Digits) -> tuple[int, ...]:
        """The axes that the box says anything about."""
        return tuple(
            axis for axis, some in enumerate(self.classes) if len(some) < digits.radix[axis]
        )


def cover(digits: Digits, on: int, off: int) -> list[Box]:
    """Boxes that hold all of `on` and nothing of `off`."""
    boxes: list[Box] = []
    left = on
    while left:
        best = max(
            _candidates(digits, left, off),
            key=lambda box: ((box.cells & left).bit_count(), -len(box.asked(digits))),
        )
        boxes.append(best)
        left ^= left & best.cells
    return _needed(boxes, on)


def _candidates(digits: Digits, left: int, off: int) -> Iterator[Box]:
    """Boxes from the first seeds that are left, each grown in several orders of the axes."""
    axes = list(range(len(digits.radix)))
    orders = [axes, axes[::-1], *(axes[at:] + axes[:at] for at in axes[1:])]
    for _ in range(_SEEDS):
        if not left:
            return
        lowest = left & -left
        left ^= lowest
        for order in orders:
            yield grow(digits, lowest.bit_length() - 1, order, off)


def grow(digits: Digits, seed: int, order: Sequence[int], off: int) -> Box:
    """The box round one combination, as wide as `off` allows when the axes are widened in this order."""
    classes: list[tuple[int, ...]] = [
        (digits.digit(axis, seed),) for axis in range(len(digits.radix))
    ]
    for axis in order:
        for one in range(digits.radix[axis]):
            if one not in classes[axis]:
                wider = [*classes]
                wider[axis] = tuple(sorted((*classes[axis], one)))
                if not _cells(digits, wider) & off:
                    classes = wider
    return Box(tuple(classes), _cells(digits, classes))


def _cells(digits: Digits, classes: Sequence[tuple[int, ...]]) -> int:
    cells = (1 << digits.size) - 1
    for axis, some in enumerate(classes):
        if len(some) < digits.radix[axis]:
            cells &= digits.pattern(axis, some)
    return cells


def _needed(boxes: list[Box], on: int) -> list[Box]:
    """Without those that the others make redundant, the smallest tried first."""
    kept = list(boxes)
    for box in sorted(boxes, key=lambda one: one.cells.bit_count()):
        others = 0
        for other in kept:
            others |= 0 if other is box else other.cells
        if on == on & others:
            kept.remove(box)
    return kept
