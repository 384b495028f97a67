"""The author's prose as blocks of pieces."""

from dataclasses import dataclass
from typing import TypeAlias

from guidebuild.translate.messages.text import Text


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
