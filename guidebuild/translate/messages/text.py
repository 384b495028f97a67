"""Words with the little that a page must know of them: which are a quantity, a reference, bold."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum
from typing import TypeAlias


class Mark(Enum):
    """What a run of words is."""

    # Members are single objects; an enum's own hash is slow, and pages look up words by the thousand.
    __hash__ = object.__hash__

    PLAIN = "plain"
    QUANTITY = "quantity"  # never breaks, keeps its order in scripts that run from the right
    REFERENCE = "reference"  # the number or letter that a thing has in the drawings
    STRONG = "strong"
    EMPHASIS = "emphasis"
    CODE = "code"
    SOFT = "soft"
    BREAK = "break"  # a new line; `words` is empty


class Age(Enum):
    """How a text stands to its source, on a page in another language."""

    __hash__ = object.__hash__

    FRESH = "fresh"
    MISSING = "missing"  # not translated: the source's words, in its language
    BEHIND = "behind"  # the translation of an earlier source
    SOURCE = "source"  # the source's words, since the translation would mislead
    WAS = "was"  # that translation, after the source


@dataclass(frozen=True, slots=True)
class Piece:
    """A run of words; `href` where it leads somewhere; `language` where it is not the page's."""

    words: str
    mark: Mark = Mark.PLAIN
    href: str | None = None
    language: str | None = None
    age: Age = Age.FRESH


Text: TypeAlias = tuple[Piece, ...]


def text(words: str, mark: Mark = Mark.PLAIN) -> Text:
    """One piece, or none where there are no words."""
    return (Piece(words, mark),) if words else ()


def plain(said: Text) -> str:
    """The words alone, for titles and descriptions."""
    return "".join(" " if piece.mark is Mark.BREAK else piece.words for piece in said)


def joined(parts: Iterable[Text], between: str) -> Text:
    """Texts one after the other with `between` between them; empty ones are left out."""
    found: list[Piece] = []
    for part in parts:
        if part and found:
            found.append(Piece(between))
        found += part
    return tuple(found)
