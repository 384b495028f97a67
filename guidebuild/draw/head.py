"""Heads in profile, each a few corners: x along the screw, its measured length beginning at x = 0.

Shapes follow the pictures of the product standards (ISO 7045, 7046, 7047, 1207, 4762, 7380); roundings are
common practice, no source.
"""

from math import cos, pi, sin

from guidebuild.draw.svg import Point

_STEPS = 8


def head(shape: str, diameter: float, height: float, neck: float) -> tuple[list[Point], float]:
    """The upper edge of the head from its top's middle to the shank, and where the shank begins.

    `neck` is the diameter where the shank begins. The lower edge is the mirror image.
    """
    r, k = diameter / 2, height
    match shape:
        case "countersunk":
            return _cone(r, k, neck), _depth(r, k, neck)
        case "raised-countersunk":
            return _dome(0, r, 0.45 * k) + _cone(r, k, neck)[1:], _depth(r, k, neck)
        case "pan-collar" | "button-collar":
            rim = 0.22 * k
            return [*_bulge(-k, -rim, 0.78 * r), (-rim, -r), (0, -r)], 0
        case "button" | "truss" | "round":
            return [*_dome(-0.12 * k, r, 0.88 * k), (0, -r)], 0
        case "cheese" | "low" | "wafer":
            return _block(k, 0.93 * r, r, 0.18 * k), 0
        case "cylinder" | "thumb" | "hexagon" | "shoulder":
            return _block(k, r, r, 0.08 * k), 0
        case "set":
            return [(0, 0), (0, -0.35 * diameter), (0.12 * diameter, -r)], 0.12 * diameter
        case _:
            return [*_bulge(-k, 0, r), (0, -r)], 0


def _depth(r: float, k: float, neck: float) -> float:
    """Where a 90 degree cone meets the shank: from the land, which takes up what the height leaves."""
    return max(k, r - neck / 2)


def _cone(r: float, k: float, neck: float) -> list[Point]:
    depth = _depth(r, k, neck)
    return [(0, 0), (0, -r), (depth - (r - neck / 2), -r), (depth, -neck / 2)]


def _block(k: float, top: float, foot: float, corner: float) -> list[Point]:
    return [(-k, 0), (-k, corner - top), (corner - k, -top), (0, -foot)]


def _dome(foot: float, r: float, rise: float) -> list[Point]:
    """A quarter of an ellipse from the top down to the rim."""
    angles = [pi / 2 * i / _STEPS for i in range(_STEPS + 1)]
    return [(foot - rise * cos(a), -r * sin(a)) for a in angles]


def _bulge(top: float, foot: float, r: float) -> list[Point]:
    """A pan head: flat in the middle, well rounded at the edge, straight above the bearing face."""
    flat, straight = 0.3 * r, 0.22 * (foot - top)
    rise = foot - straight - top
    angles = [pi / 2 * i / _STEPS for i in range(_STEPS + 1)]
    round_edge = [(top + rise * (1 - cos(a)), -flat - (r - flat) * sin(a)) for a in angles]
    return [(top, 0), *round_edge, (foot, -r)]
