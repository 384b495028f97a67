"""A span and the lines and columns of both its ends, as machine-readable reports want them."""

from dataclasses import dataclass

from guidebuild.source.span import Span

MOST = 300  # characters of a span that a report repeats


@dataclass(frozen=True, slots=True)
class Place:
    """Lines and columns counted from 1, in code points; the end is the first position past the span."""

    line: int
    column: int
    end_line: int
    end_column: int


def place(span: Span) -> Place:
    """Both ends of a span."""
    end_line, end_column = span.source.position(span.end)
    return Place(span.line, span.column, end_line, end_column)


def short_text(span: Span) -> str:
    """The span's text, cut where it is long: enough to know it again."""
    text = span.text
    return text if len(text) <= MOST else text[:MOST] + "…"
