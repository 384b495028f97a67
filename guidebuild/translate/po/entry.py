"""One entry of a catalogue, and the whole of it."""

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Previous:
    """What the source was when the translation was made (`#|`)."""

    context: str | None = None
    source: str | None = None
    plural: str | None = None


@dataclass(frozen=True, slots=True)
class Entry:
    """`context` is the segment's id. `translations` has one text, or one a plural form.

    `remarks` are the translator's own comments (`#`), `notes` ours to the translator (`#.`).
    """

    source: str
    translations: tuple[str, ...] = ("",)
    context: str | None = None
    plural: str | None = None
    remarks: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    references: tuple[str, ...] = ()
    flags: tuple[str, ...] = ()
    previous: Previous = Previous()
    obsolete: bool = False
    line: int = field(default=0, compare=False)  # of its first keyword

    @property
    def fuzzy(self) -> bool:
        """Whether the translation is not to be trusted as it stands."""
        return "fuzzy" in self.flags


@dataclass(frozen=True, slots=True)
class Catalogue:
    """`header` is the entry of the empty source: its lines as name -> value, in order."""

    header: Mapping[str, str]
    header_remarks: tuple[str, ...]
    entries: tuple[Entry, ...]
