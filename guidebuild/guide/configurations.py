"""Every valid combination of answers, numbered after merging; a condition is one integer, a bit each."""

from dataclasses import dataclass

from guidebuild.device.condition import Condition
from guidebuild.source.finding import Told


@dataclass(frozen=True)
class Configurations:
    """Numbered 0 .. total-1. `everywhere` has a bit for each."""

    total: int
    everywhere: int

    def bits(self, condition: Condition | None) -> int:
        """The configurations in which a condition holds (None: all); the same object for an equal condition."""
        raise NotImplementedError

    def answers(self, number: int) -> dict[str, tuple[str, ...]]:
        """Configuration `number` as option -> the merged values that stand for it."""
        raise NotImplementedError

    def tell(self, where: int, among: int | None = None) -> Told:
        """A set of configurations in the options' own words, against `among` (where the step is shown)."""
        raise NotImplementedError
