"""What a translator sent back, into the catalogue: checked entry by entry, taken whole or not at all."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from guidebuild.translate.catalogue.change import Class, compared
from guidebuild.translate.catalogue.merge import signal_of
from guidebuild.translate.po.entry import Catalogue, Entry, Previous
from guidebuild.translate.segments.segment import Segment


@dataclass(frozen=True, slots=True)
class Brought:
    """Counts of entries. `taken` are fresh now; `older` were made for an older source and are kept as outdated.

    `known`: the same as what is there; `empty`: not translated; `gone`: their sentence is no longer in the source.
    """

    catalogue: Catalogue
    taken: int = 0
    older: int = 0
    known: int = 0
    empty: int = 0
    gone: tuple[str, ...] = ()


def brought(
    current: Catalogue, returned: Catalogue, segments: Mapping[str, Segment], language: str
) -> Brought:
    """`current` with the translations of `returned`; `segments` by their id in `current`, in `language`.

    The checks have been passed. A translation made for an older source never takes the place of a fresh one.
    """
    by_id = {entry.context: entry for entry in returned.entries if not entry.obsolete}
    counts = {"taken": 0, "older": 0, "known": 0, "empty": 0}
    entries = []
    for entry in current.entries:
        came = by_id.pop(entry.context, None)
        how, new = _one(entry, came, segments.get(entry.context or ""), language)
        if came is not None and not entry.obsolete:
            counts[how] += 1
        entries.append(new)
    gone = tuple(sorted(name or "" for name, one in by_id.items() if any(one.translations)))
    header = {**current.header, **_kept(returned.header)}
    return Brought(replace(current, entries=tuple(entries), header=header), **counts, gone=gone)


def _kept(header: Mapping[str, str]) -> dict[str, str]:
    """What a translator's tool says of the translator; the rest of the header is ours."""
    names = ("PO-Revision-Date", "Last-Translator", "Language-Team")
    return {name: header[name] for name in names if header.get(name)}


def _one(
    entry: Entry, came: Entry | None, segment: Segment | None, language: str
) -> tuple[str, Entry]:
    if came is None or segment is None or entry.obsolete:
        return "known", entry
    if not came.translations[0]:
        return "empty", replace(entry, remarks=came.remarks or entry.remarks)
    levels = (signal_of(came) or segment.signal, segment.signal)
    change = compared(came.source, segment.text, language, levels)
    if change is not None and change.classes != {Class.COSMETIC}:
        if entry.translations[0]:
            return "older", entry
        notes = (*entry.notes, f"changed: {'; '.join(change.words)}")
        old = Previous(source=came.source)
        return "older", replace(
            entry, translations=came.translations, flags=("fuzzy",), previous=old, notes=notes
        )
    same = came.translations == entry.translations and came.fuzzy == entry.fuzzy
    if same:
        return "known", replace(entry, remarks=came.remarks or entry.remarks)
    if came.fuzzy:
        fresh = entry.translations[0] and not entry.fuzzy
        outdated = replace(entry, translations=came.translations, flags=("fuzzy",))
        return "older", entry if fresh else outdated
    notes = tuple(note for note in entry.notes if not note.startswith("changed: "))
    new = replace(entry, translations=came.translations, flags=(), previous=Previous(), notes=notes)
    return "taken", replace(new, remarks=came.remarks or entry.remarks)


@dataclass(frozen=True, slots=True)
class Status:
    """Segments and words of a catalogue by what they are: words are what a translator is paid by."""

    fresh: int = 0
    outdated: int = 0
    missing: int = 0
    words_to_do: int = 0

    @property
    def total(self) -> int:
        """All segments."""
        return self.fresh + self.outdated + self.missing

    def __add__(self, other: "Status") -> "Status":
        """Several catalogues together."""
        return Status(
            self.fresh + other.fresh,
            self.outdated + other.outdated,
            self.missing + other.missing,
            self.words_to_do + other.words_to_do,
        )


def status(catalogue: Catalogue, count: Callable[[str], int]) -> Status:
    """Where a catalogue stands; `count` counts the words of a source text."""
    fresh = outdated = missing = words = 0
    for entry in catalogue.entries:
        if entry.obsolete:
            continue
        if entry.translations[0] and not entry.fuzzy:
            fresh += 1
            continue
        words += count(entry.source)
        outdated += bool(entry.translations[0])
        missing += not entry.translations[0]
    return Status(fresh, outdated, missing, words)


def by_id(catalogue: Catalogue, segments: Sequence[Segment]) -> dict[str, Segment]:
    """Each segment by the id that its entry has in a catalogue that was merged from them."""
    live: Iterable[Entry] = (entry for entry in catalogue.entries if not entry.obsolete)
    return {entry.context or "": segment for entry, segment in zip(live, segments, strict=True)}
