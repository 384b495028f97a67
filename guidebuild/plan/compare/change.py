"""One difference, and the steps that it touches."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Change:
    """`words` is one sentence. `ids`: what it is about (things, functions, hazards), to find the steps by."""

    words: str
    ids: frozenset[str]


@dataclass(frozen=True, slots=True)
class Touched:
    """A step of a guide, as a reader calls it."""

    guide: str
    path: str
    step: str
    title: str


@dataclass(frozen=True, slots=True)
class Difference:
    """A change with the steps that it touches, in document order."""

    change: Change
    steps: tuple[Touched, ...]
