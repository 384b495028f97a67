"""Which old entry a segment goes on from: by id and by what it says, never by likeness."""

import re
from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace
from functools import partial

from guidebuild.translate.catalogue.change import looks
from guidebuild.translate.po.entry import Entry
from guidebuild.translate.segments.segment import Segment

_CHECKSUM = re.compile(r"\.[0-9a-f]{6}(?:-\d+)?$")


def stem_of(context: str) -> str:
    """An id without a sentence's own checksum: the step and slot that it stands in."""
    return _CHECKSUM.sub("", context)


def place_of(entry: Entry) -> str:
    """The step or record entry that an entry of a catalogue stands in."""
    return stem_of(entry.context or "").rpartition("/")[0]


def slot_of(context: str) -> str:
    """The slot of an id: its last part, without checksum."""
    return stem_of(context).rpartition("/")[2]


def matched(segments: Sequence[Segment], entries: Sequence[Entry]) -> dict[int, Entry]:
    """Index of a segment -> the entry that it goes on from.

    First the same text in the same step and slot, then the same but for its looks; then, between neighbours
    that are matched, by place; then the same text in the same slot of another step (moved, or its step got
    another name); last, where a step's sentences say that it is another one renamed, the rest of it by place.
    """
    found: dict[int, Entry] = {}
    left = {number: entry for number, entry in enumerate(entries) if entry.context is not None}
    for key in (str, looks):
        _by_text(segments, left, found, key, _stem, lambda entry: stem_of(entry.context or ""))
    _by_place(segments, left, found)
    _by_text(
        segments, left, found, str, lambda one: one.slot, lambda entry: slot_of(entry.context or "")
    )
    names = renamed(segments, entries, found)
    if names:
        known = partial(_stem, names=names)
        _by_text(segments, left, found, looks, known, lambda entry: stem_of(entry.context or ""))
        _by_place(segments, left, found, names)
    return found


def renamed(
    segments: Sequence[Segment], entries: Sequence[Entry], found: Mapping[int, Entry]
) -> dict[str, str]:
    """Place now -> the place that entries know it by.

    Only where the words are the witness: most sentences of a new place are known, and known as those of one
    old place that is nowhere any more. A step of which nothing but the heading is known is passed over.
    """
    now = {segment.place for segment in segments}
    known = {place_of(entry) for entry in entries if not entry.obsolete}
    votes: dict[str, Counter[str]] = {}
    for index, entry in found.items():
        place, old = segments[index].place, place_of(entry)
        if old and place not in known and old not in now:
            votes.setdefault(place, Counter())[old] += 1
    won = {place: count.most_common(1)[0][0] for place, count in votes.items()}
    shared = {old for old, count in Counter(won.values()).items() if count > 1}
    return {place: old for place, old in won.items() if old not in shared}


def _by_text(
    segments: Sequence[Segment],
    left: dict[int, Entry],
    found: dict[int, Entry],
    key: Callable[[str], str],
    of_segment: Callable[[Segment], str],
    of_entry: Callable[[Entry], str],
) -> None:
    """Take out of `left` what says the same by `key` where `of_segment` equals `of_entry`, in order."""
    waiting: dict[tuple[str, str], list[int]] = {}
    for number, entry in left.items():
        waiting.setdefault((of_entry(entry), key(entry.source)), []).append(number)
    for index, segment in enumerate(segments):
        numbers = waiting.get((of_segment(segment), key(segment.text)))
        if index not in found and numbers:
            found[index] = left.pop(numbers.pop(0))


def _stem(segment: Segment, names: Mapping[str, str] | None = None) -> str:
    """The id without a sentence's checksum, under the name that the catalogue may know the place by."""
    known = replace(segment, place=(names or {}).get(segment.place, segment.place))
    return stem_of(known.id) if segment.many else known.id


def _by_place(
    segments: Sequence[Segment],
    left: dict[int, Entry],
    found: dict[int, Entry],
    names: Mapping[str, str] | None = None,
) -> None:
    """What stands alone in its slot keeps its id; sentences pair in order between matched neighbours."""
    rest: dict[str, list[int]] = _grouped(
        (stem_of(entry.context or ""), number)
        for number, entry in left.items()
        if not entry.obsolete
    )
    for stem, indexes in _grouped(
        (_stem(one, names or {}), index) for index, one in enumerate(segments)
    ).items():
        new = [index for index in indexes if index not in found]
        old = rest.get(stem, [])
        pairs: Iterable[tuple[int, int]]
        if len(new) == len(old) or not segments[indexes[0]].many:
            pairs = zip(new, old, strict=False)
        else:
            pairs = _between_neighbours(indexes, old, found, left)
        for index, number in pairs:
            found[index] = left.pop(number)


def _between_neighbours(
    indexes: Sequence[int], old: Sequence[int], found: dict[int, Entry], left: dict[int, Entry]
) -> Iterable[tuple[int, int]]:
    """Pairs of the gaps that hold as many new sentences as old ones; where they differ nobody can know."""
    lines = [left[number].line for number in old]
    gap: list[int] = []
    low = 0
    pairs: list[tuple[int, int]] = []
    for index in (*indexes, None):
        if index is not None and index not in found:
            gap.append(index)
            continue
        high = found[index].line if index is not None else 2**62
        inside = [number for number, line in zip(old, lines, strict=True) if low < line < high]
        if len(inside) == len(gap):
            pairs += zip(gap, inside, strict=True)
        gap, low = [], max(low, high)
    return pairs


def _grouped(pairs: Iterable[tuple[str, int]]) -> dict[str, list[int]]:
    groups: dict[str, list[int]] = {}
    for key, value in pairs:
        groups.setdefault(key, []).append(value)
    return groups
