"""From a place in a paragraph's plain text back to the author's file."""

from guidebuild.guide.prose import Paragraph, Run
from guidebuild.source.span import Span


def span_in(paragraph: Paragraph, start: int, end: int) -> Span:
    """The author's characters behind `paragraph.text[start:end]`.

    Exact where a run stands in the file as it reads; where escapes make it longer, the run's whole span.
    """
    first = _offset(paragraph, start, at_end=False)
    last = _offset(paragraph, end, at_end=True)
    return Span(paragraph.span.source, first, max(first, last))


def _offset(paragraph: Paragraph, at: int, at_end: bool) -> int:
    passed = 0
    for run in paragraph.runs:
        length = len(run.text)
        if at < passed + length or (at_end and at <= passed + length):
            return _within(run, at - passed, at_end)
        passed += length
    return paragraph.span.end


def _within(run: Run, at: int, at_end: bool) -> int:
    if run.span.end - run.span.start == len(run.text):
        return run.span.start + at
    return run.span.end if at_end else run.span.start
