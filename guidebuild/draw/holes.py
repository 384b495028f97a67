"""Holes on a view: a screw from above, a ring round this step's screws, a ring with a cross where it is empty."""

from guidebuild.draw.frame import Frame
from guidebuild.draw.look import HoleLook, HoleMark, Scene
from guidebuild.draw.marks import empty_hole, order_square
from guidebuild.draw.screw import screw_id, size_of
from guidebuild.draw.svg import Box, Point, circle, element, number

_RING = 1.8  # units between a head and its ring
_LEAST = 2.0  # units: no head is drawn smaller than this radius


def head_radius(hole: HoleMark, where: Frame) -> float:
    """Radius of the head on the sheet."""
    diameter = float(size_of(hole.screw).head.diameter) if hole.screw else 4.0
    return max(_LEAST, diameter / 2 * where.scale)


def ring_radius(hole: HoleMark, where: Frame) -> float:
    """Radius at which leaders end: outside the ring."""
    return head_radius(hole, where) + _RING + 1.0


def hole_marks(scene: Scene, where: Frame) -> str:
    """All holes inside the frame, empty ones first."""
    shown = [hole for hole in scene.holes if where.outline.grown(2).holds(_dot(hole, where))]
    shown.sort(key=lambda hole: (hole.look is HoleLook.NOW, hole.look is HoleLook.SCREW))
    marks = "".join(_mark(hole, where) for hole in shown)
    taken = [Box(*where.at(hole.at), 0, 0).grown(ring_radius(hole, where)) for hole in shown]
    for hole in shown:
        if hole.order is not None:
            at = _beside(where.at(hole.at), ring_radius(hole, where), where.outline, taken)
            taken.append(_square(at))
            marks += order_square(at, str(hole.order))
    return marks


def _dot(hole: HoleMark, where: Frame) -> Box:
    return Box(*where.at(hole.at), 0, 0)


def _mark(hole: HoleMark, where: Frame) -> str:
    at, radius = where.at(hole.at), head_radius(hole, where)
    if hole.look is HoleLook.EMPTY:
        thread = float(size_of(hole.screw).diameter) / 2 * where.scale if hole.screw else 2.0
        return empty_hole(at, max(1.6, thread))
    if hole.screw is None:
        screw = circle("mid solid", at, radius)
    else:
        scale = radius / (float(size_of(hole.screw).head.diameter) / 2)
        screw = _head(hole, at, scale)
    return screw + (circle("now", at, radius + _RING) if hole.look is HoleLook.NOW else "")


def _head(hole: HoleMark, at: Point, scale: float) -> str:
    assert hole.screw is not None
    place = f"translate({number(at[0])} {number(at[1])}) scale({number(scale)})"
    return element("use", href=f"#{screw_id(hole.screw)}-top", transform=place)


def _square(at: Point) -> Box:
    return Box(*at, 0, 0).grown(4.5)


def _beside(at: Point, radius: float, outline: Box, taken: list[Box]) -> Point:
    """A free place for the square of an order: towards the middle of the drawing first."""
    x, y = at
    out = radius + 5.0
    inward = 1 if x < outline.centre[0] else -1
    down = 1 if y < outline.centre[1] else -1
    places = [
        (x + inward * out, y),
        (x, y + down * out),
        (x + inward * out, y + down * 0.6 * out),
        (x, y - down * out),
        (x - inward * out, y),
    ]
    free = [one for one in places if not any(_square(one).touches(box) for box in taken)]
    return (free or places)[0]
