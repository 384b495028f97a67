"""Holes on a view: a screw from above, a ring round this step's screws, a ring with a cross where it is empty."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from guidebuild.device.screw import Screw
from guidebuild.draw.frame import Frame
from guidebuild.draw.look import HoleLook, HoleMark, Scene
from guidebuild.draw.marks import empty_hole, order_square
from guidebuild.draw.screw import size_of, top_id
from guidebuild.draw.svg import Box, Point, circle, element, number

_RING = 1.8  # units between a head and its ring
_LEAST = 2.0  # units: no head is drawn smaller than this radius


@lru_cache(maxsize=1_000)
def head_radius(screw: Screw | None, scale: float) -> float:
    """Radius of the head on the sheet, of so many units a mm."""
    diameter = float(size_of(screw).head.diameter) if screw else 4.0
    return max(_LEAST, diameter / 2 * scale)


def ring_radius(hole: HoleMark, where: Frame) -> float:
    """Radius at which leaders end: outside the ring."""
    return head_radius(hole.screw, where.scale) + _RING + 1.0


@dataclass(frozen=True, slots=True)
class Marks:
    """`still`: a piece for each hole of the view that this step leaves alone; `now` what lies over them."""

    still: list[str]
    now: str


def hole_marks(scene: Scene, where: Frame) -> Marks:
    """All holes inside the frame, this step's last."""
    outline = where.outline
    region = outline.grown(2)
    shown = [hole for hole in scene.holes if region.holds(_dot(hole, where))]
    still, now = [""] * scene.places, ""
    for hole in shown:
        if hole.look is HoleLook.NOW:
            now += _mark(hole, where)
        else:
            still[hole.place] = _mark(hole, where)
    return Marks(still, now + "".join(_orders(shown, where, outline)))


def _orders(shown: list[HoleMark], where: Frame, outline: Box) -> Iterator[str]:
    """The squares with the order of tightening, where they are free of holes and of each other."""
    if not any(hole.order for hole in shown):
        return
    taken = [Box(*where.at(hole.at), 0, 0).grown(ring_radius(hole, where)) for hole in shown]
    for hole in shown:
        if hole.order is not None:
            at = _beside(where.at(hole.at), ring_radius(hole, where), outline, taken)
            taken.append(_square(at))
            yield order_square(at, str(hole.order))


def _dot(hole: HoleMark, where: Frame) -> Box:
    return Box(*where.at(hole.at), 0, 0)


def _mark(hole: HoleMark, where: Frame) -> str:
    return _drawn(hole.screw, hole.look, where.at(hole.at), where.scale)


@lru_cache(maxsize=10_000)  # most holes look the same in many steps
def _drawn(screw: Screw | None, look: HoleLook, at: Point, scale: float) -> str:
    radius = head_radius(screw, scale)
    if look is HoleLook.EMPTY:
        thread = float(size_of(screw).diameter) / 2 * scale if screw else 2.0
        return empty_hole(at, max(1.6, thread))
    if screw is None:
        head = circle("mid solid", at, radius)
    else:
        head = _head(screw, at, radius / (float(size_of(screw).head.diameter) / 2))
    return head + (circle("now", at, radius + _RING) if look is HoleLook.NOW else "")


def _head(screw: Screw, at: Point, scale: float) -> str:
    place = f"translate({number(at[0])} {number(at[1])}) scale({number(scale)})"
    return element("use", href=f"#{top_id(screw)}", transform=place)


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
