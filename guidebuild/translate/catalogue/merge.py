"""A new catalogue from the source as it is now and the catalogue as it was: nothing translated is ever lost."""

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from hashlib import sha256

from guidebuild.translate.catalogue.change import Class, compared
from guidebuild.translate.catalogue.match import matched
from guidebuild.translate.po.entry import Catalogue, Entry, Previous
from guidebuild.translate.segments.segment import Segment

_SIGNAL = "signal word: "
_CHANGED = "changed: "
_LEVEL = re.compile(r"\bsignal word (\w+) → ")


def merged(
    segments: Sequence[Segment], before: Catalogue, language: str, header: Mapping[str, str]
) -> Catalogue:
    """The catalogue of `segments`, in their order; what has no segment any more stands at its end, obsolete.

    `language` is the source's. A translation whose source changed for more than looks is kept, marked as
    `fuzzy`, with the source that it was made for and with what changed since.
    """
    old = matched(segments, before.entries)
    taken: set[str] = set()
    entries = []
    for index, segment in enumerate(segments):
        entry = _entry(segment, old.get(index), language, taken)
        taken.add(entry.context or "")
        entries.append(entry)
    used = {id(entry) for entry in old.values()}
    left = [one for one in before.entries if id(one) not in used and any(one.translations)]
    return Catalogue(
        {**before.header, **header}, before.header_remarks, (*entries, *_gone(left, entries))
    )


def _gone(left: Sequence[Entry], live: Sequence[Entry]) -> Iterator[Entry]:
    """What has no segment any more, each text once; a new text may have the place of an old one."""
    there = {(entry.context, entry.source) for entry in live}
    for entry in map(_put_away, left):
        if (entry.context, entry.source) not in there:
            there.add((entry.context, entry.source))
            yield entry


def _put_away(entry: Entry) -> Entry:
    """An obsolete entry holds the source and the level that its translation was made for, should it come back."""
    level = signal_of(entry)
    notes = (_SIGNAL + level,) if level else ()
    entry = replace(entry, obsolete=True, notes=notes, references=())
    if not entry.fuzzy or entry.previous.source is None:
        return entry
    return replace(entry, source=entry.previous.source, previous=Previous(), flags=())


def source_hash(segments: Sequence[Segment]) -> str:
    """A checksum of all that the catalogue is about, to tell an older issue by."""
    text = "\0".join(f"{one.place}\1{one.slot}\1{one.text}" for one in segments)
    return sha256(text.encode()).hexdigest()[:16]


def signal_of(entry: Entry) -> str:
    """The signal word's level that a translation was made for: of an outdated one, the level before."""
    if entry.fuzzy:
        for note in entry.notes:
            if note.startswith(_CHANGED) and (found := _LEVEL.search(note)):
                return "" if found[1] == "none" else found[1]
    return next(
        (note.removeprefix(_SIGNAL) for note in entry.notes if note.startswith(_SIGNAL)), ""
    )


def _entry(segment: Segment, old: Entry | None, language: str, taken: set[str]) -> Entry:
    new = Entry(
        source=segment.text,
        context=_context(segment, old, taken),
        notes=_notes(segment),
        references=(f"{segment.file}#{segment.place}" if segment.place else segment.file,),
    )
    if old is None or not any(old.translations):
        return new if old is None else replace(new, remarks=old.remarks)
    new = replace(new, translations=old.translations, remarks=old.remarks)
    made_for = old.previous.source if old.fuzzy and old.previous.source is not None else old.source
    change = compared(made_for, segment.text, language, (signal_of(old), segment.signal))
    if change is None or change.classes == {Class.COSMETIC}:
        still = old.fuzzy and old.previous.source is None and old.source == segment.text
        return replace(new, flags=("fuzzy",)) if still else new
    return replace(
        new,
        flags=("fuzzy",),
        previous=Previous(source=made_for),
        notes=(*new.notes, _CHANGED + "; ".join(change.words)),
    )


def _context(segment: Segment, old: Entry | None, taken: set[str]) -> str:
    """The old id where the segment still stands in its step and slot, so that no line changes; else its own."""
    from_old = old.context if old is not None and not old.obsolete else None
    stem = segment.id.rpartition(".")[0] if segment.many else segment.id
    if from_old is not None and from_old not in taken and from_old.startswith(stem):
        return from_old
    name, count = segment.id, 1
    while name in taken:
        count += 1
        name = f"{segment.id}-{count}"
    return name


def _notes(segment: Segment) -> tuple[str, ...]:
    notes = list(segment.notes)
    if segment.signal:
        notes.append(_SIGNAL + segment.signal)
    if segment.most is not None:
        notes.append(f"at most {segment.most} characters")
    return tuple(notes)
