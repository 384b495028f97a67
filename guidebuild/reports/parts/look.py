"""What a text report may use: the width, colour, and characters beyond ASCII."""

from dataclasses import dataclass
from enum import Enum


class Paint(Enum):
    """The few terminal styles that a slip uses (ECMA-48 SGR parameters)."""

    MARK = "1;4"  # bold and underlined: it stays visible without colour
    DIM = "2"
    STRONG = "1"
    RED = "1;31"
    YELLOW = "1;33"
    BLUE = "1;34"


@dataclass(frozen=True, slots=True)
class Look:
    """`width` in columns; `colour` only on a terminal; `unicode` where the output can carry it."""

    width: int = 80
    colour: bool = False
    unicode: bool = True

    def paint(self, text: str, style: Paint) -> str:
        """The text in a style, or as it is where there is no colour."""
        return f"\x1b[{style.value}m{text}\x1b[0m" if self.colour and text else text

    def pick(self, fine: str, ascii_only: str) -> str:
        """The fine sign where it can be shown, else its stand-in."""
        return fine if self.unicode else ascii_only
