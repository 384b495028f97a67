"""The tray sheet's drawings, true to size: screws lying in a pocket with their length, and the 50 mm rule."""

from guidebuild.device.screw import Screw
from guidebuild.draw.dimension import upright
from guidebuild.draw.screw import from_above, shadow, size_of
from guidebuild.draw.svg import Box, drawing, element, figure, line, number, path, text

_GAP = 2.6  # mm between two screws
_WIDE = 82.0  # mm: a pocket's drawing is never wider (the pockets stand two abreast on A4)


def lie_svg(screw: Screw, count: int, title: str) -> str:
    """`count` screws upright beside each other with one head from above and the length dimensioned, 1:1."""
    size = size_of(screw)
    half = float(size.head.diameter) / 2
    start = 2 * half + 9.0
    step = 2 * half + _GAP
    row = max(1, int((_WIDE - start) // step))
    high = size.before + size.length + 3.6
    side = path("ink", shadow(screw))
    lying = [
        element(
            "g",
            side,
            line("ctr", (-size.before - 1.4, 0), (size.length + 1.4, 0)),
            transform=_stand(start + half + step * (i % row), high * (i // row)),
        )
        for i in range(count)
    ]
    top_at = (half, half - size.before)
    top = element(
        "g", from_above(screw), transform=f"translate({number(half)} {number(top_at[1])})"
    )
    cross = line("ctr", (-0.8, top_at[1]), (2 * half + 0.8, top_at[1]))
    cross += line("ctr", (half, top_at[1] - half - 0.8), (half, top_at[1] + half + 0.8))
    x = start - 4.0
    ends = line("thin", (x - 1, 0), (start - 0.6, 0))
    ends += line(
        "thin", (x - 1, size.length), (start + half - size.diameter / 2 - 0.6, size.length)
    )
    dimension = ends + upright(x, 0, size.length, figure(size.length), 1.8, 3.5)
    bottom = max(high * ((count - 1) // row) + size.length + 1.6, top_at[1] + half + 1)
    upper = -size.before - 1.6
    right = start + step * min(count, row)
    box = Box(-1.2, upper, right + 1.2, bottom - upper)
    return drawing("lie", box, top, cross, *lying, dimension, title=title, mm=1)


def _stand(x: float, y: float) -> str:
    return f"translate({number(x)} {number(y)}) rotate(90)"


def rule_svg(title: str) -> str:
    """The rule of 50 mm by which the reader checks the print."""
    ticks = "".join(
        f"M{i},7V{2.8 if i % 10 == 0 else 3.8 if i % 5 == 0 else 5.1}" for i in range(1, 50)
    )
    scale = path("mid", f"M0,0V7M0,7H50M50,7V0{ticks}")
    figures = [text("fig", (x, -1), str(x), 3) for x in range(0, 51, 10)]
    return drawing("rule50 drawn", Box(-2, -4.4, 54, 12), scale, *figures, title=title, mm=1)
