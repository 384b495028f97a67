"""One sentence, name or title that a translator gets."""

from dataclasses import dataclass, field
from enum import Enum
from hashlib import sha256

from guidebuild.source.span import Span
from guidebuild.translate.segments.codes import Code


class Weight(Enum):
    """How much harm an outdated text may do: it decides what the reader is shown first."""

    NAME = "name"
    TEXT = "text"
    CAUTION = "caution"


@dataclass(frozen=True, slots=True)
class Timed:
    """When a caption stands, in milliseconds; `next`: when another one comes."""

    start: int
    end: int
    next: int | None = None


@dataclass(frozen=True, slots=True)
class Segment:
    """`file` is the content file that the text stands in; `place` the step or entry in it; `slot` where there.

    The id is stable: `place/slot` for what stands there once, and for a sentence of prose the start of its own
    checksum behind it, so that a neighbour that comes or goes changes nothing.
    """

    file: str
    place: str
    slot: str
    text: str
    span: Span = field(compare=False)
    codes: tuple[Code, ...] = ()
    weight: Weight = Weight.TEXT
    signal: str = ""  # the level of the safety message that it stands in
    notes: tuple[str, ...] = ()  # what a translator needs to know
    most: int | None = None  # characters
    many: bool = False  # one of several sentences in its slot
    timed: Timed | None = None  # of a caption

    @property
    def id(self) -> str:
        """The id that a new catalogue gives it."""
        stem = f"{self.place}/{self.slot}" if self.place else self.slot
        return f"{stem}.{sha256(self.text.encode()).hexdigest()[:6]}" if self.many else stem

    @property
    def family(self) -> tuple[str, str]:
        """What a reworded sentence has in common with what it was."""
        return self.place, self.slot
