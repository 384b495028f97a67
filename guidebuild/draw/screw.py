"""A screw drawn true to size: its head from above, then its shadow from the side, on one centre line.

x = 0 is where its length begins: the bearing face, of countersunk heads and set screws the top (ISO 225). So
the lengths of screws drawn below each other compare at a glance.
"""

import re
from dataclasses import dataclass, replace
from functools import cache, lru_cache
from math import cos, pi, sin

from guidebuild.device.head_size import HeadSize, head_size
from guidebuild.device.screw import Screw
from guidebuild.device.vocabulary import heads
from guidebuild.draw.head import head
from guidebuild.draw.marks import hole_symbol
from guidebuild.draw.recess import recess
from guidebuild.draw.svg import (
    Box,
    Point,
    circle,
    drawing,
    element,
    line,
    path,
    polygon,
    use,
)
from guidebuild.draw.thread import Shank, shank

_GAP = 1.5  # mm between the head from above and the side view
_AIR = 0.6  # mm above and below the widest head, together
_OVERHANG = 1.2  # mm by which the centre line passes the edges


@dataclass(frozen=True, slots=True)
class ScrewSize:
    """What a drawing needs, in mm. `before`: how far the head stands before x = 0."""

    diameter: float
    pitch: float
    length: float
    head: HeadSize
    before: float
    shape: str


@cache
def size_of(screw: Screw) -> ScrewSize:
    """Sizes for a drawing; what the words left open is taken as usual (an unknown length as 3 d, M3)."""
    diameter = float(screw.diameter or 3)
    length = float(screw.length) if screw.length else 3 * diameter
    size = head_size(screw)
    word = heads()[screw.head or "pan"]
    before = 0.0 if word.overall else float(size.height)
    if word.word == "raised-countersunk":
        before = 0.45 * float(size.height)
    return ScrewSize(
        diameter, float(screw.pitch or 0) or diameter / 5, length, size, before, word.shape
    )


@cache
def screw_id(screw: Screw) -> str:
    """Id of the screw's symbol in a page: one for each screw that looks different."""
    sizes = (screw.thread, screw.length, screw.head, screw.drive, screw.standard)
    words = "-".join(str(one) for one in sizes if one is not None)
    return "s-" + re.sub(r"[^A-Za-z0-9.]+", "-", words).strip("-").replace(".", "_")


@cache
def top_id(screw: Screw) -> str:
    """Id of the symbol of its head from above, which is the same for every length."""
    return f"{screw_id(replace(screw, length=None))}-top"


@cache
def shadow(screw: Screw) -> str:
    """Path data of the side view, x along the screw."""
    size = size_of(screw)
    upper, start = head(
        size.shape, float(size.head.diameter), float(size.head.height), size.diameter
    )
    tapping = screw.thread.startswith("ST")
    body = shank(
        Shank(size.diameter, size.pitch, min(start, size.length / 2), size.length, tapping)
    )
    lower = [(x, -y) for x, y in upper]
    return polygon([*lower, *body, *upper[:0:-1]])


@cache
def from_above(screw: Screw) -> str:
    """The head from above with its recess, centred on (0, 0)."""
    size = size_of(screw)
    diameter = float(size.head.diameter)
    if size.shape == "hexagon":
        rim = path("mid solid", polygon(_hexagon(diameter / 2)))
    else:
        rim = circle("mid solid", (0, 0), diameter / 2)
    if size.shape == "countersunk" and diameter > 4 * size.pitch:
        rim += circle("thin", (0, 0), 0.43 * diameter)
    return rim + recess(screw.drive, diameter)


def _hexagon(radius: float) -> list[Point]:
    return [(radius * sin(pi / 3 * i), -radius * cos(pi / 3 * i)) for i in range(6)]


def screw_box(*screws: Screw) -> Box:
    """One box for all screws of a guide, so that their lengths begin on one line."""
    sizes = [size_of(one) for one in screws]
    wide = max(float(one.head.diameter) for one in sizes)
    left = -max(one.before for one in sizes) - _GAP - wide - _OVERHANG
    right = max(one.length for one in sizes) + _OVERHANG
    return Box(left, -wide / 2 - _AIR / 2, right - left, wide + _AIR)


def screw_symbols(*screws: Screw, lying: tuple[Screw, ...] = (), box: Box | None = None) -> str:
    """Symbols `#<screw_id>` (side), `#<top_id>` (above) and that of an empty hole: once in each page
    that shows these screws. Those of `lying` are drawn in `box` by `screw_svg`, too."""
    sides = {screw_id(one): path("ink", shadow(one), id=screw_id(one)) for one in screws}
    tops = {top_id(one): element("g", from_above(one), id=top_id(one)) for one in screws}
    both = {_both_id(one): _both(one, box or screw_box(one), by_use=True) for one in lying}
    found = {**sides, **tops, **both}
    return hole_symbol() + "".join(found[key] for key in sorted(found))


def _both_id(screw: Screw) -> str:
    return f"{screw_id(screw)}-both"


def _both(screw: Screw, box: Box, by_use: bool) -> str:
    """Head and side view on one centre line; as a symbol of what stands in symbols, or whole."""
    middle = box.x + _OVERHANG + (box.height - _AIR) / 2
    axis = line("ctr", (box.x, 0), (size_of(screw).length + _OVERHANG, 0))
    if by_use:
        views = use(top_id(screw), (middle, 0)) + use(screw_id(screw))
        return element("g", axis, views, id=_both_id(screw))
    top = element("g", from_above(screw), transform=f"translate({middle:.3f} 0)")
    return axis + top + path("ink", shadow(screw))


@lru_cache(maxsize=1_000)  # a screw is drawn at each of its acts
def screw_svg(
    screw: Screw, scale: float = 2, box: Box | None = None, title: str = "", by_use: bool = False
) -> str:
    """The screw at `scale` (2 is 2:1) in mm, as an `svg class="screw"`.

    `box` is that of all screws of the guide (`screw_box`), None for the screw's own. Without `title` it is an
    ornament. `by_use` refers to the `lying` of `screw_symbols`, else everything stands in it.
    """
    box = box or screw_box(screw)
    views = use(_both_id(screw)) if by_use else _both(screw, box, by_use=False)
    return drawing("screw", box, views, title=title, mm=scale)
