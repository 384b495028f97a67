"""A guide in another language: what is translated, what is out of date, and what there is only in the source."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from enum import Enum

from guidebuild.source.span import Span
from guidebuild.translate.catalogue.change import Changed, Class, compared
from guidebuild.translate.catalogue.match import matched
from guidebuild.translate.catalogue.merge import signal_of
from guidebuild.translate.po.entry import Catalogue, Entry
from guidebuild.translate.segments.codes import decoded
from guidebuild.translate.segments.segment import Segment, Weight


class Shown(Enum):
    """What the page must say of a text."""

    MISSING = "missing"  # the source's words stand here
    OUTDATED = "outdated"  # the translation stands here, marked
    SOURCE_FIRST = "source first"  # the source first, then the outdated translation


@dataclass(frozen=True, slots=True)
class Stale:
    """One text that is not a fresh translation. `old` is the outdated translation, `source` the text now."""

    shown: Shown
    source: str
    old: str = ""
    change: Changed | None = None


@dataclass(slots=True)
class Translator:
    """Answers the walk from catalogues (content file -> catalogue), and keeps what was not fresh, by place."""

    catalogues: Mapping[str, Catalogue]
    language: str  # the source's
    stale: dict[Span, Stale] = field(default_factory=dict)
    _entries: dict[tuple[str, str], Entry] = field(default_factory=dict)

    def __call__(self, segment: Segment) -> str | None:
        """The text to show for a segment; None for the source's own."""
        entry = self._entries.get((segment.file, segment.id))
        if entry is None or not entry.translations[0]:
            self.stale[segment.span] = Stale(Shown.MISSING, segment.text)
            return None
        text = entry.translations[0]
        made_for = entry.previous.source if entry.fuzzy and entry.previous.source else entry.source
        change = compared(made_for, segment.text, self.language, (signal_of(entry), segment.signal))
        fits = decoded(text, segment.codes, segment.span) is not None
        if fits and (change is None or change.classes == {Class.COSMETIC}) and not entry.fuzzy:
            return text
        grave = (
            segment.weight is Weight.CAUTION or not fits or (change is not None and change.grave)
        )
        shown = Shown.SOURCE_FIRST if grave else Shown.OUTDATED
        self.stale[segment.span] = Stale(shown, segment.text, text, change)
        return None if grave else text

    def learn(self, some: Sequence[Segment]) -> None:
        """Match all segments of a source with its catalogues before the walk asks for one."""
        by_file: dict[str, list[Segment]] = {}
        for one in some:
            by_file.setdefault(one.file, []).append(one)
        for file, inside in by_file.items():
            entries = self.catalogues[file].entries if file in self.catalogues else ()
            for index, entry in matched(inside, entries).items():
                self._entries[file, inside[index].id] = entry
