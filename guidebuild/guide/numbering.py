"""The combinations of the axes, counted through like the digits of a number; sets of them as integers.

The last axis turns fastest. All patterns here are over the full product; `Compression` then drops what is
excluded, so that the configurations that are left are numbered without gaps.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import compress
from math import prod


@dataclass(frozen=True, slots=True)
class Digits:
    """`radix[i]` classes of axis i; its digit changes every `stride[i]` combinations."""

    radix: tuple[int, ...]
    stride: tuple[int, ...]
    size: int

    @classmethod
    def of(cls, radix: tuple[int, ...]) -> "Digits":
        """The numbering of axes with so many classes each."""
        stride = tuple(prod(radix[number + 1 :]) for number in range(len(radix)))
        return cls(radix, stride, prod(radix))

    def digit(self, axis: int, number: int) -> int:
        """The class of an axis in combination `number`."""
        return number // self.stride[axis] % self.radix[axis]

    def pattern(self, axis: int, classes: Sequence[int]) -> int:
        """The combinations in which an axis is in one of these classes."""
        run = (1 << self.stride[axis]) - 1
        block = 0
        for one in classes:
            block |= run << (one * self.stride[axis])
        return repeat(block, self.stride[axis] * self.radix[axis], self.size)


def repeat(block: int, period: int, size: int) -> int:
    """`block` again every `period` bits, up to `size` bits."""
    while period < size:
        block |= block << period
        period *= 2
    return block & ((1 << size) - 1)


@dataclass(frozen=True)
class Compression:
    """What is left after exclusions: `valid` over the full product, `numbers` the combinations that are."""

    valid: str | None  # one character a combination, lowest first; None: nothing is excluded
    numbers: Sequence[int]

    def squeeze(self, pattern: int) -> int:
        """A set over the full product as a set over the configurations."""
        if self.valid is None:
            return pattern
        width = len(self.valid)
        kept = compress(f"{pattern:0{width}b}"[::-1], (one == "1" for one in self.valid))
        return int("".join(kept)[::-1] or "0", 2)

    def spread(self, bits: int) -> int:
        """A set over the configurations as a set over the full product."""
        if self.valid is None:
            return bits
        digits = ["0"] * len(self.valid)
        for number, one in zip(self.numbers, f"{bits:0{len(self.numbers)}b}"[::-1], strict=True):
            digits[number] = one
        return int("".join(digits)[::-1] or "0", 2)


def compression(size: int, excluded: int) -> Compression:
    """The numbering after `excluded` is dropped."""
    if not excluded:
        return Compression(None, range(size))
    valid = f"{((1 << size) - 1) ^ excluded:0{size}b}"[::-1]
    numbers = [number for number, one in enumerate(valid) if one == "1"]
    return Compression(valid, numbers)
