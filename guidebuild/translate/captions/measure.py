"""The length of a caption as a reader meets it: tags off, entities read, marks on letters not counted apart."""

import unicodedata

from guidebuild.translate.captions.limits import WIDE
from guidebuild.translate.webvtt.cue import Cue
from guidebuild.translate.webvtt.cue_text import plain_text

_NOT_SEEN = frozenset({"Mn", "Me", "Cf", "Cc"})


def lines(cue: Cue) -> list[str]:
    """The lines of a caption as they are read."""
    return [" ".join(line.split()) for line in plain_text(cue.text).split("\n") if line.strip()]


def length(text: str, language: str) -> float:
    """Characters of a text; where characters are wide, a narrow one counts half."""
    seen = [letter for letter in text if unicodedata.category(letter) not in _NOT_SEEN]
    if language.partition("-")[0].lower() not in WIDE:
        return len(seen)
    return sum(1 if unicodedata.east_asian_width(letter) in "WF" else 0.5 for letter in seen)


def seconds(milliseconds: int) -> str:
    """`2.7 s`, in the source's form."""
    return f"{milliseconds / 1000:.3f}".rstrip("0").rstrip(".") + " s"
