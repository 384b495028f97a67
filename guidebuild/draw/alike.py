"""Screws that are easily mixed up, side by side at 4:1 with the difference dimensioned."""

from collections.abc import Sequence
from dataclasses import dataclass

from guidebuild.device.screw import Screw
from guidebuild.draw.dimension import from_outside, upright
from guidebuild.draw.screw import ScrewSize, screw_id, size_of
from guidebuild.draw.svg import Box, drawing, element, figure, line, number, text, use

SCALE = 4
_TIP = 1.1  # mm, an arrow


@dataclass(frozen=True, slots=True)
class Lookalike:
    """A screw and the number that it has in the guide."""

    label: str
    screw: Screw


def alike_svg(screws: Sequence[Lookalike], title: str) -> str:
    """Two or more screws, their lengths beginning on one line; each next one's difference is dimensioned.

    It refers to `screw_symbols` of these screws.
    """
    sizes = [size_of(one.screw) for one in screws]
    wide = max(float(one.head.diameter) for one in sizes)
    pitch = wide + (5.4 if len(screws) == 2 else 8.6)
    head_y = -max(one.before for one in sizes) - wide / 2 - 2.2
    beside = [-wide / 2 - 2.4] * len(sizes)
    if (
        len(screws) == 2
    ):  # the second one's length stands on its other side, to leave the middle free
        beside[1] = wide / 2 + 2.4
    between = (pitch - 0.8) / 2 if len(screws) == 2 else wide / 2 + 2.6
    parts = []
    for i, (one, size) in enumerate(zip(screws, sizes, strict=True)):
        parts += [_one(one, size, pitch * i, head_y), _length(size, pitch * i, beside[i])]
        if i + 1 < len(sizes):
            parts.append(_difference(size, sizes[i + 1], pitch * i, pitch, between))
    left, top = -wide / 2 - 4.6, head_y - wide / 2 - 1.4
    right = pitch * (len(sizes) - 1) + wide / 2 + (4.2 if len(screws) == 2 else 2)
    box = Box(left, top, right - left, max(size.length for size in sizes) + 4 - top)
    return drawing("view alike", box, *parts, title=title, mm=SCALE)


def _one(one: Lookalike, size: ScrewSize, x: float, head_y: float) -> str:
    half = float(size.head.diameter) / 2
    axes = line("ctr", (x, head_y - half - 1), (x, size.length + 1))
    axes += line("ctr", (x - half - 0.8, head_y), (x + half + 0.8, head_y))
    top = use(f"{screw_id(one.screw)}-top", (x, head_y))
    stand = f"translate({number(x)} 0) rotate(90)"
    side = element("use", href=f"#{screw_id(one.screw)}", transform=stand)
    return axes + top + side + text("num", (x - half - 1.7, head_y + 0.65), one.label, 1.9)


def _length(size: ScrewSize, middle: float, beside: float) -> str:
    """The length, dimensioned at `beside` from the screw's centre line."""
    side = 1 if beside > 0 else -1
    x = middle + beside
    edge = middle + side * (float(size.head.diameter) / 2 + 0.4)
    foot = middle + side * (size.diameter / 2 + 0.4)
    ends = line("thin", (edge, 0), (x + 0.8 * side, 0))
    ends += line("thin", (foot, size.length), (x + 0.8 * side, size.length))
    return ends + upright(x, 0, size.length, figure(size.length), _TIP, 1.4)


def _difference(
    first: ScrewSize, second: ScrewSize, middle: float, pitch: float, between: float
) -> str:
    """What the second screw is longer or shorter, dimensioned at `between` from the first one's centre line."""
    low, high = sorted((first.length, second.length))
    if low == high:
        return ""
    x = middle + between
    from_first = middle + first.diameter / 2 + 0.4
    to_second = middle + pitch - second.diameter / 2 - 0.4
    ends = line("thin", (from_first, first.length), (x + 0.9, first.length))
    ends += line("thin", (x - 0.9, second.length), (to_second, second.length))
    return ends + from_outside(x, low, high, figure(round(high - low, 3)), _TIP, 1.9)
