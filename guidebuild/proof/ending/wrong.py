"""One thing in one state that it must not end in."""

from dataclasses import dataclass, replace


@dataclass(frozen=True, slots=True)
class Wrong:
    """States as integers; `because` as in Ending."""

    key: str
    wanted: int
    found: int
    where: int
    because: str

    def less(self, where: int) -> "Wrong":
        """The same outside these configurations."""
        return replace(self, where=self.where ^ (self.where & where)) if where else self
