"""Chance, from a seed or from hypothesis: everything random here is asked of it."""

import random
from collections.abc import Callable, Sequence
from typing import TypeVar

from hypothesis import strategies as st

T = TypeVar("T")


class Dice:
    """`below(n)` gives 0 … n-1. Nought is always the plainest choice, so that hypothesis shrinks to it."""

    def __init__(self, below: Callable[[int], int]) -> None:
        self.below = below

    def often(self, per_cent: int) -> bool:
        """True in so many of a hundred throws."""
        return self.below(100) >= 100 - per_cent

    def number(self, least: int, most: int) -> int:
        """Both ends may come."""
        return least + self.below(most - least + 1)

    def pick(self, among: Sequence[T]) -> T:
        """One of them, the first being the plainest."""
        return among[self.below(len(among))]

    def some(self, among: Sequence[T], per_cent: int) -> list[T]:
        """Those that a throw takes, in their order."""
        return [one for one in among if self.often(per_cent)]


def seeded(seed: int) -> Dice:
    """The same throws for the same seed."""
    return Dice(random.Random(seed).randrange)


@st.composite
def dice(draw: st.DrawFn) -> Dice:
    """Dice whose throws hypothesis chooses, remembers and shrinks."""
    return Dice(lambda n: draw(st.integers(0, n - 1)) if n > 1 else 0)
