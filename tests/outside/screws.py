"""A screw from its words, for tests that have no file at hand."""

from guidebuild.device.designation import parse_screw
from guidebuild.device.screw import Screw
from guidebuild.source.span import Span
from guidebuild.source.text import Source


def span_of(text: str) -> Span:
    """A span that covers a text of its own."""
    return Span(Source("test", text), 0, len(text))


def screw(text: str) -> Screw:
    """The screw; the test fails where the words are none."""
    found = parse_screw(text, span_of(text))
    assert found is not None, text
    return found
