"""A paragraph into its sentences, and back: each sentence keeps the codes that lie in it."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from guidebuild.guide.language.places import span_in
from guidebuild.guide.language.sentences import sentences
from guidebuild.guide.prose import Paragraph, Run
from guidebuild.source.span import Span
from guidebuild.translate.segments.codes import Coded, decoded, encoded

# A sentence's coded text and place, to what it becomes; None leaves the source.
Change = Callable[[Coded, Span], str | None]


@dataclass(frozen=True, slots=True)
class _Piece:
    runs: tuple[Run, ...]
    span: Span


def changed(paragraph: Paragraph, change: Change) -> Paragraph:
    """The paragraph with each sentence as `change` says; white space between sentences stays."""
    runs: list[Run] = []
    last = 0
    for start, end in sentences(paragraph.text):
        runs += _between(paragraph.runs, last, start)
        piece = _Piece(_between(paragraph.runs, start, end), span_in(paragraph, start, end))
        runs += _one(piece, change)
        last = end
    runs += _between(paragraph.runs, last, len(paragraph.text))
    return replace(paragraph, runs=tuple(runs))


def _one(piece: _Piece, change: Change) -> tuple[Run, ...]:
    coded = encoded(piece.runs)
    text = change(coded, piece.span)
    told = None if text is None else decoded(text, coded.codes, piece.span)
    return piece.runs if told is None else told


def _between(runs: Sequence[Run], start: int, end: int) -> tuple[Run, ...]:
    """The runs of `text[start:end]`, cut where a sentence ends inside one."""
    found: list[Run] = []
    passed = 0
    for run in runs:
        first, last = max(start - passed, 0), min(end - passed, len(run.text))
        if first < last:
            found.append(replace(run, text=run.text[first:last], span=_part(run, first, last)))
        passed += len(run.text)
    return tuple(found)


def _part(run: Run, first: int, last: int) -> Span:
    if run.span.end - run.span.start != len(run.text):
        return run.span
    return Span(run.span.source, run.span.start + first, run.span.start + last)
