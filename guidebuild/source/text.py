"""A file of the author's, as text, with the way from an offset to a line and column."""

from bisect import bisect_right
from dataclasses import dataclass
from functools import cached_property


@dataclass(frozen=True, eq=False)
class Source:
    """One file as read: `path` is relative to the content folder, with `/`; `text` is what it decodes to.

    Two sources are the same only if they are the same object, so spans compare and hash fast.
    """

    path: str
    text: str

    @cached_property
    def line_starts(self) -> list[int]:
        """Offset of the first character of each line (at least one)."""
        starts = [0]
        find = self.text.find
        at = find("\n")
        while at >= 0:
            starts.append(at + 1)
            at = find("\n", at + 1)
        return starts

    def position(self, offset: int) -> tuple[int, int]:
        """Line and column of an offset, both counted from 1, columns in code points."""
        line = bisect_right(self.line_starts, offset)
        return line, offset - self.line_starts[line - 1] + 1

    def line(self, number: int) -> str:
        """The text of a line, counted from 1, without its line end."""
        start = self.line_starts[number - 1]
        end = self.line_starts[number] if number < len(self.line_starts) else len(self.text)
        return self.text[start:end].rstrip("\r\n")
