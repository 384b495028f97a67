"""Every valid combination of answers, numbered after merging; a condition is one integer, a bit each."""

from collections.abc import Callable
from functools import lru_cache
from math import prod

from guidebuild.device.condition import Both, Condition, Either, Is, Not
from guidebuild.device.record import Device
from guidebuild.guide.asked import asked
from guidebuild.guide.guide import Guide
from guidebuild.guide.merging import Axis, axes
from guidebuild.guide.numbering import Digits, compression
from guidebuild.guide.telling import tell
from guidebuild.source.finding import Told

MOST = 2**20  # after merging; more is refused, never sampled
SHARED = 2**12  # what is kept for the next guide must stay small


class TooManyConfigurations(Exception):
    """`count` after merging is above MOST; `options` are those that multiply, most values first."""

    def __init__(self, count: int, options: tuple[tuple[str, int], ...]) -> None:
        self.count = count
        self.options = options
        told = ", ".join(f"{option} ({values})" for option, values in options)
        super().__init__(f"{count} configurations, more than {MOST}: {told}")


class Configurations:
    """Numbered 0 .. total-1. `everywhere` has a bit for each."""

    def __init__(self, all_axes: tuple[Axis, ...], exclude: tuple[Condition, ...] = ()) -> None:
        self.axes = all_axes
        self.digits = Digits.of(tuple(max(1, len(axis.classes)) for axis in all_axes))
        if self.digits.size > MOST:
            several = [(one.option, len(one.classes)) for one in all_axes if len(one.classes) > 1]
            by_count = tuple(sorted(several, key=lambda one: (-one[1], one[0])))
            raise TooManyConfigurations(self.digits.size, by_count)
        self._at = {axis.option: number for number, axis in enumerate(all_axes)}
        self._full = (1 << self.digits.size) - 1
        excluded = 0
        for condition in exclude:
            excluded |= self._evaluate(condition, self._pattern, self._full)
        self._left = compression(self.digits.size, excluded)
        self.total = len(self._left.numbers)
        self.everywhere = (1 << self.total) - 1
        self._objects: dict[int, int] = {self.everywhere: self.everywhere}
        self._bits: dict[Condition, int] = {}
        self._both: dict[tuple[int, int], tuple[int, int, int]] = {}

    def bits(self, condition: Condition | None) -> int:
        """The configurations in which a condition holds (None: all); the same object for an equal condition.

        A comparison with an option or value that is not known holds everywhere: the reader has told it.
        """
        if condition is None:
            return self.everywhere
        found = self._bits.get(condition)
        if found is None:
            found = self._bits[condition] = self.same(
                self._evaluate(condition, self._leaf, self.everywhere)
            )
        return found

    def same(self, bits: int) -> int:
        """The one object that stands for this set, so that sets can be compared by identity."""
        return self._objects.setdefault(bits, bits)

    def both(self, one: int, other: int) -> int:
        """Where both hold; again the same object for the same two objects."""
        if one is other or other is self.everywhere:
            return one
        if one is self.everywhere:
            return other
        known = self._both.get((id(one), id(other)))
        if known is None:
            known = (
                one,
                other,
                self.same(one & other),
            )  # the two are kept, so their ids stay theirs
            self._both[id(one), id(other)] = known
        return known[2]

    def answers(self, number: int) -> dict[str, tuple[str, ...]]:
        """Configuration `number` as option -> the merged values that stand for it."""
        combination = self._left.numbers[number]
        return {
            axis.option: axis.classes[self.digits.digit(at, combination)] if axis.classes else ()
            for at, axis in enumerate(self.axes)
        }

    def tell(self, where: int, among: int | None = None) -> Told:
        """A set of configurations in the options' own words, against `among` (where the step is shown)."""
        return tell(self, where, self.everywhere if among is None else among)

    def spread(self, bits: int) -> int:
        """A set of configurations as a set over the full product of the axes."""
        return self._left.spread(bits)

    def _pattern(self, leaf: Is) -> int:
        at = self._at.get(leaf.option)
        if at is None:
            return self._full
        classes = self.axes[at].class_of(leaf.values)
        assert classes is not None, f"{leaf} was not among the conditions when values were merged"
        return self.digits.pattern(at, classes)

    def _leaf(self, leaf: Is) -> int:
        if leaf.option not in self._at:
            return self.everywhere
        found = self._bits.get(leaf)
        if found is None:
            found = self._bits[leaf] = self.same(self._left.squeeze(self._pattern(leaf)))
        return found

    def _evaluate(self, condition: Condition, leaf: Callable[[Is], int], full: int) -> int:
        match condition:
            case Is():
                return leaf(condition)
            case Not(of):
                return full ^ self._evaluate(of, leaf, full)
            case Both(parts):
                found = full
                for part in parts:
                    found &= self._evaluate(part, leaf, full)
                return found
            case Either(parts):
                found = 0
                for part in parts:
                    found |= self._evaluate(part, leaf, full)
                return found


def configurations(guide: Guide, device: Device) -> Configurations:
    """The configurations of a guide on its device (TooManyConfigurations above MOST)."""
    found = axes(guide.options, asked(guide, device))
    few = prod(max(1, len(axis.classes)) for axis in found) <= SHARED
    return (_shared if few else Configurations)(found, guide.exclude)


@lru_cache(maxsize=4)  # so that the guides of one record can share what is worked out of it
def _shared(all_axes: tuple[Axis, ...], exclude: tuple[Condition, ...]) -> Configurations:
    return Configurations(all_axes, exclude)
