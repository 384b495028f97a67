"""Marks over a photograph: numbers beside it with haloed leaders, free points, keep-out fields, arrows.

They are vectors over the picture, never in it, so no translation redraws them and no enlarging blurs them.
The overlay is `WIDE` units wide; the picture lies under it from `LEFT` to `LEFT + PICTURE`, its top at `TOP`.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import atan2

from guidebuild.draw.frame import WIDE
from guidebuild.draw.leaders import Leader, Target
from guidebuild.draw.marks import arrow_tip
from guidebuild.draw.placing import place
from guidebuild.draw.svg import Box, Point, circle, drawing, line, number, path, rect, text

LEFT = 32.0
PICTURE = WIDE - 2 * LEFT
TOP = 2.0


@dataclass(frozen=True, slots=True)
class PhotoPoint:
    """A label and its place on the picture, in per cent of width and height."""

    label: str
    at: Point


@dataclass(frozen=True, slots=True)
class PhotoMarks:
    """All marks of a picture; places in per cent. `keep_out`: two corners each; an arrow: two or more places."""

    points: Sequence[PhotoPoint] = ()
    here: Sequence[Point] = ()
    keep_out: Sequence[tuple[Point, Point]] = ()
    arrows: Sequence[Sequence[Point]] = ()


def overlay_svg(marks: PhotoMarks, width: int, height: int, title: str) -> str:
    """The overlay for a picture of this size in pixels (`svg.view`), the picture's frame included."""
    picture = Box(LEFT, TOP, PICTURE, PICTURE * height / width)
    targets = [Target(one.label, _at(one.at, picture), 1.0) for one in marks.points]
    room = Box(0, picture.y - 2, WIDE, picture.height + 12)
    leaders = place(targets, picture, room)
    parts = [rect("mid", picture)]
    parts += [_keep_out(_at(a, picture), _at(b, picture)) for a, b in marks.keep_out]
    parts += [_arrow([_at(p, picture) for p in places]) for places in marks.arrows]
    parts += [_here(_at(p, picture)) for p in marks.here]
    parts += [_leader(one) for one in leaders]
    box = Box(0, 0, WIDE, picture.bottom + 12)
    return drawing("view", box, *parts, title=title)


def _at(place_: Point, picture: Box) -> Point:
    across, down = place_
    return picture.x + picture.width * across / 100, picture.y + picture.height * down / 100


def _haloed(css: str, data: str) -> str:
    return path("halo", data) + path(css, data)


def _here(at: Point) -> str:
    """A ring in the accent round the place."""
    return circle("halo", at, 4.6) + circle("now", at, 4.6)


def _keep_out(first: Point, second: Point) -> str:
    """A field crossed out from corner to corner: keep tools and fingers away."""
    (x0, y0), (x1, y1) = first, second
    a, b, c, d = (number(value) for value in (x0, y0, x1, y1))
    return _haloed("wide", f"M{a},{b}H{c}V{d}H{a}ZM{a},{b}L{c},{d}M{c},{b}L{a},{d}")


def _arrow(places: Sequence[Point]) -> str:
    """The way of a hand or a part, in the accent."""
    (x0, y0), (x1, y1) = places[-2], places[-1]
    way = "L".join(f"{number(x)},{number(y)}" for x, y in places)
    return _haloed("now", f"M{way}") + arrow_tip((x1, y1), atan2(y1 - y0, x1 - x0), 5, "tip-now")


def _leader(one: Leader) -> str:
    (x0, y0), (x1, y1) = one.bend, one.tip
    data = f"M{number(x0)},{number(y0)}L{number(x1)},{number(y1)}"
    dot = circle("halo-dot", one.tip, 1.9) + circle("tip", one.tip, 1.05)
    figure = text("num", (one.middle, one.outer[1] - 2.1), one.label, 10)
    return _haloed("ldr", data) + line("ldr", one.outer, one.bend) + dot + figure
