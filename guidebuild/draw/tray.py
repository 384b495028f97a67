"""The tray sheet's drawings, true to size: screws lying in a pocket with their length, and the 50 mm rule."""

from dataclasses import dataclass

from guidebuild.device.screw import Screw
from guidebuild.draw.dimension import upright
from guidebuild.draw.screw import screw_id, size_of, top_id
from guidebuild.draw.svg import (
    Box,
    Write,
    drawing,
    element,
    figure,
    line,
    number,
    path,
    text,
    use,
)

_GAP = 2.6  # mm between two screws
_WIDE = 82.0  # mm: a pocket's drawing is never wider (the pockets stand two abreast on A4)


@dataclass(frozen=True, slots=True)
class _Lying:
    """Where the screws of a pocket lie: the first one's centre line, the pitch, how many a row, the row's height."""

    first: float
    pitch: float
    row: int
    high: float

    def place(self, n: int) -> tuple[float, float]:
        """Centre line and bearing face of a screw."""
        return self.first + self.pitch * (n % self.row), self.high * (n // self.row)


def lie_height(screw: Screw, count: int) -> float:
    """Height of the drawing of `count` screws, in mm: by it a sheet is planned."""
    return _box(screw, count, _lying(screw)).height


def lie_svg(screw: Screw, count: int, title: str, write: Write = figure) -> str:
    """`count` screws upright beside each other with one head from above and the length dimensioned, 1:1.

    It refers to `screw_symbols` of this screw.
    """
    size, lying = size_of(screw), _lying(screw)
    half = float(size.head.diameter) / 2
    head_y = half - size.before
    top = use(top_id(screw), (half, head_y))
    cross = line("ctr", (-0.8, head_y), (2 * half + 0.8, head_y))
    cross += line("ctr", (half, head_y - half - 0.8), (half, head_y + half + 0.8))
    upright_ones = [_standing(screw, lying.place(i)) for i in range(count)]
    dimension = _dimension(screw, lying, write)
    box = _box(screw, count, lying)
    return drawing("lie", box, top, cross, *upright_ones, dimension, title=title, mm=1)


def _lying(screw: Screw) -> _Lying:
    size = size_of(screw)
    wide = float(size.head.diameter)
    start = wide + 9.0
    pitch = wide + _GAP
    row = max(1, int((_WIDE - start) // pitch))
    return _Lying(start + wide / 2, pitch, row, size.before + size.length + 3.6)


def _standing(screw: Screw, at: tuple[float, float]) -> str:
    """The shadow on its centre line, turned to stand on its tip."""
    size = size_of(screw)
    axis = line("ctr", (-size.before - 1.4, 0), (size.length + 1.4, 0))
    turn = f"translate({number(at[0])} {number(at[1])}) rotate(90)"
    return element("g", use(screw_id(screw)), axis, transform=turn)


def _dimension(screw: Screw, lying: _Lying, write: Write) -> str:
    size = size_of(screw)
    half = float(size.head.diameter) / 2
    x = lying.first - half - 4.0
    ends = line("thin", (x - 1, 0), (lying.first - half - 0.6, 0))
    foot = lying.first - size.diameter / 2 - 0.6
    ends += line("thin", (x - 1, size.length), (foot, size.length))
    return ends + upright(x, 0, size.length, write(size.length), 1.8, 3.5)


def _box(screw: Screw, count: int, lying: _Lying) -> Box:
    size = size_of(screw)
    half = float(size.head.diameter) / 2
    last = lying.high * ((count - 1) // lying.row)
    bottom = max(last + size.length + 1.6, 2 * half - size.before + 1)
    top = -size.before - 1.6
    right = lying.first - half + lying.pitch * min(count, lying.row)
    return Box(-1.2, top, right + 1.2, bottom - top)


def rule_svg(title: str) -> str:
    """The rule of 50 mm by which the reader checks the print."""
    ticks = "".join(
        f"M{i},7V{2.8 if i % 10 == 0 else 3.8 if i % 5 == 0 else 5.1}" for i in range(1, 50)
    )
    scale = path("mid", f"M0,0V7M0,7H50M50,7V0{ticks}")
    figures = [text("fig", (x, -1), str(x), 3) for x in range(0, 51, 10)]
    return drawing("rule50 drawn", Box(-2, -4.4, 54, 12), scale, *figures, title=title, mm=1)
