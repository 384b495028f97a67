"""A place in an author's file: half-open, in code points of the decoded text."""

from dataclasses import dataclass

from guidebuild.source.text import Source


@dataclass(frozen=True, slots=True)
class Span:
    """From `start` up to but not including `end`, in `source.text`."""

    source: Source
    start: int
    end: int

    @property
    def text(self) -> str:
        """The characters that the span covers."""
        return self.source.text[self.start : self.end]

    @property
    def line(self) -> int:
        """Line of the first character, counted from 1."""
        return self.source.position(self.start)[0]

    @property
    def column(self) -> int:
        """Column of the first character, counted from 1, in code points."""
        return self.source.position(self.start)[1]

    @property
    def sort_key(self) -> tuple[str, int, int]:
        """Findings are told in this order: file, start, end."""
        return self.source.path, self.start, self.end
