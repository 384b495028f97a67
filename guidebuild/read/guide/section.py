"""A Markdown body cut at its headings: stages, steps, methods, and what stands in each."""

from collections.abc import Iterable
from dataclasses import dataclass, field

from guidebuild.guide.prose import Prose
from guidebuild.read.guide.pieces import Break, Fence, Heading, Piece
from guidebuild.read.markdown.runs import Image


@dataclass(slots=True)
class Section:
    """A heading and what follows it up to the next heading; the first section of a file has none."""

    heading: Heading | None
    pieces: list[Fence | Break | Prose | Image] = field(default_factory=list)
    end: int = 0  # offset after the last non-blank character


def sections(pieces: Iterable[Piece]) -> list[Section]:
    """The whole body, in order."""
    section = Section(None)
    found = [section]
    for piece in pieces:
        if isinstance(piece, Heading):
            section = Section(piece, end=piece.line.end)
            found.append(section)
        else:
            section.pieces.append(piece)
            section.end = max(section.end, piece.span.end)
    return found
