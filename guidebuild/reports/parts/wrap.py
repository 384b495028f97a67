"""Words set to a width in columns, where a wide character takes two and a combining one none."""

import re
import unicodedata


def columns(text: str) -> int:
    """Columns that a text takes on a terminal. Source: Unicode Standard Annex 11 (W and F take two)."""
    return len(text) if text.isascii() else sum(map(_columns_of, text))


def _columns_of(char: str) -> int:
    if unicodedata.combining(char) or unicodedata.category(char) in ("Mn", "Me", "Cf"):
        return 0
    return 2 if unicodedata.east_asian_width(char) in "WF" else 1


def wrap(text: str, width: int) -> list[str]:
    """The text in lines of at most `width` columns, nothing lost.

    A word that is longer is cut, but for one in plain ASCII: a path or an id is copied from here. No line is
    broken at a no-break space, which is shown as a space.
    """
    lines, line = [], ""
    for word in (piece for whole in _words(text) for piece in _pieces(whole, max(width, 2))):
        if line and columns(line) + 1 + columns(word) > width:
            lines.append(line)
            line = word
        else:
            line = f"{line} {word}" if line else word
    return [each.replace("\N{NO-BREAK SPACE}", " ") for each in (*lines, line) if each]


def _words(text: str) -> list[str]:
    return [word for word in re.split(r"[ \t\r\n]+", text) if word]


def _pieces(word: str, width: int) -> list[str]:
    """The word, cut where it is wider than a line (a script that sets no spaces)."""
    if word.isascii() or columns(word) <= width:
        return [word]
    pieces, piece, used = [], "", 0
    for char in word:
        wide = _columns_of(char)
        if used + wide > width:
            pieces.append(piece)
            piece, used = "", 0
        piece += char
        used += wide
    return [*pieces, piece]
