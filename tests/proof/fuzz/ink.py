"""Words that stand somewhere: each gets a place of its own, so that findings can be told apart."""

from dataclasses import dataclass

from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source

PAPER = Source("fuzz.md", " " * 10_000)


@dataclass
class Ink:
    """Writes on, place after place."""

    at: int = 0

    def span(self) -> Span:
        """The next place."""
        self.at += 1
        return Span(PAPER, self.at, self.at + 1)

    def said(self, text: str) -> Said:
        """A word at the next place."""
        return Said(text, self.span())

    def words(self, texts: list[str]) -> tuple[Said, ...]:
        """Several words, each at its own place."""
        return tuple(self.said(text) for text in texts)
