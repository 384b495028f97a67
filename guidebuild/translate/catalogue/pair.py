"""A source sentence with its translation, and what a check says of the two."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from guidebuild.translate.po.entry import Entry
from guidebuild.translate.segments.segment import Segment


@dataclass(frozen=True, slots=True)
class Pair:
    """`terms`: source term -> the approved term of the target language."""

    segment: Segment
    entry: Entry
    source_language: str
    language: str
    terms: Mapping[str, str] = field(default_factory=dict)

    @property
    def text(self) -> str:
        """The translation."""
        return self.entry.translations[0]


@dataclass(frozen=True, slots=True)
class Slip:
    """`start` and `end` in the translation; `words` fill the check's MESSAGE and HELP."""

    start: int
    end: int
    words: Mapping[str, object] = field(default_factory=dict)
