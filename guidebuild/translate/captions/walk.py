"""The same walk for captions as for guides: their texts out, and translations in. Times never change."""

from dataclasses import replace

from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.captions.coded import coded_cue, cue_text
from guidebuild.translate.segments.segment import Segment, Timed
from guidebuild.translate.segments.slots import Slots
from guidebuild.translate.webvtt.cue import Captions, Cue

SLOT = "caption"


def caption_texts(captions: Captions, source: Source, slots: Slots) -> Captions:
    """The captions of the file `source` with each text as the walk's `translate` gives it."""
    slots.file, slots.notes = source.path, ()
    named = {cue.id for cue in captions.cues if cue.id and not cue.id.isdigit()}
    told = []
    for cue, after in zip(captions.cues, (*captions.cues[1:], None), strict=True):
        slots.place = cue.id if cue.id in named else ""
        slots.timed = Timed(cue.start, cue.end, after.start if after else None)
        told.append(_cue(cue, span_of(cue, source), slots))
    slots.place, slots.timed = "", None
    return replace(captions, cues=tuple(told))


def caption_segments(captions: Captions, source: Source) -> tuple[Segment, ...]:
    """What a translator gets of them, in order; the same words twice are one text."""
    found: list[Segment] = []
    caption_texts(captions, source, Slots(lambda segment: found.append(segment)))
    return tuple({one.id: one for one in reversed(found)}.values())[::-1]


def span_of(cue: Cue, source: Source) -> Span:
    """The caption's words in their file; its times where it has none."""
    starts = source.line_starts
    count = cue.text.count("\n") + 1 if cue.text else 0
    first = min(cue.line + 1 if count else cue.line, len(starts))
    last = min(max(first + count - 1, first), len(starts))
    return Span(source, starts[first - 1], starts[last - 1] + len(source.line(last)))


def _cue(cue: Cue, span: Span, slots: Slots) -> Cue:
    if not cue.text.strip():
        return cue
    coded = coded_cue(cue.text)
    told = slots.coded(coded, span, SLOT, many=not slots.place)
    text = None if told is None else cue_text(told, coded.codes, span)
    return cue if text is None else replace(cue, text=text)
