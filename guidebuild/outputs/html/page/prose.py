"""The author's sentences as pieces: marks kept, quantities kept together."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import TypeAlias

from guidebuild.guide import prose
from guidebuild.guide.language.words import tokens
from guidebuild.source.said import Said
from guidebuild.translate.messages.text import Mark, Piece, Text

_ANGLE = re.compile(r"[ \u00a0](?=[°′″]$)")  # an angle has no space before its sign
_MARKS = {"strong": Mark.STRONG, "emphasis": Mark.EMPHASIS, "code": Mark.CODE}


@dataclass(frozen=True, slots=True)
class Paragraph:
    """One paragraph."""

    text: Text
    kind: str = "paragraph"


@dataclass(frozen=True, slots=True)
class Bullets:
    """A list; each item is blocks."""

    ordered: bool
    items: tuple[tuple["Block", ...], ...]
    kind: str = "bullets"


@dataclass(frozen=True, slots=True)
class Quote:
    """A quotation."""

    inside: tuple["Block", ...]
    kind: str = "quote"


Block: TypeAlias = Paragraph | Bullets | Quote


def block(one: prose.Prose) -> Block:
    """A block of the author's prose."""
    match one:
        case prose.Paragraph():
            return Paragraph(tuple(piece for run in one.runs for piece in _run(run)))
        case prose.Bullets():
            items = tuple(tuple(block(inner) for inner in item) for item in one.items)
            return Bullets(one.ordered, items)
        case prose.Quote():
            return Quote(tuple(block(inner) for inner in one.inside))


def words(said: Said | None) -> Text:
    """A sentence of the author's in a block of YAML."""
    return tuple(_quantities(said.text, Mark.PLAIN, None)) if said is not None else ()


def _run(run: prose.Run) -> Iterator[Piece]:
    if run.text == "\n":
        yield Piece("", Mark.BREAK)
        return
    mark = next((_MARKS[name] for name in _MARKS if name in run.marks), Mark.PLAIN)
    yield from _quantities(run.text, mark, run.href)


def _quantities(said: str, mark: Mark, href: str | None) -> Iterator[Piece]:
    """`5 mm` in a sentence is a piece of its own; marked words stay whole."""
    if mark is not Mark.PLAIN or href is not None:
        yield Piece(said, mark, href)
        return
    done = 0
    for kind, found, start, end in tokens(said):
        if kind == "quantity":
            if start > done:
                yield Piece(said[done:start])
            yield Piece(_ANGLE.sub("", found).replace(" ", "\u00a0"), Mark.QUANTITY)
            done = end
    if done < len(said):
        yield Piece(said[done:])
