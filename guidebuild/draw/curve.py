"""Path data moved, scaled, measured: fontTools reads and writes it (arcs become cubic curves, quarters arcs again)."""

import re
from functools import lru_cache
from typing import Any

from fontTools.misc.transform import Transform  # type: ignore[import-untyped]
from fontTools.pens.boundsPen import BoundsPen  # type: ignore[import-untyped]
from fontTools.pens.pointInsidePen import PointInsidePen  # type: ignore[import-untyped]
from fontTools.pens.roundingPen import RoundingPen  # type: ignore[import-untyped]
from fontTools.pens.transformPen import TransformPen  # type: ignore[import-untyped]
from fontTools.svgLib.path import parse_path  # type: ignore[import-untyped]

from guidebuild.draw.short_pen import ShortPen
from guidebuild.draw.svg import Box, Point

Matrix = tuple[float, float, float, float, float, float]
PLAIN: Matrix = (1, 0, 0, 1, 0, 0)
_CALL = re.compile(r"(matrix|translate|scale|rotate|skewX|skewY)\s*\(([^)]*)\)")
_NUMBER = re.compile(r"[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?")


def numbers(text: str | None) -> list[float]:
    """The numbers in an attribute."""
    return [float(one) for one in _NUMBER.findall(text or "")]


def matrix(text: str | None) -> Matrix:
    """The `transform` attribute as one matrix; what can't be read changes nothing."""
    whole = Transform()
    for name, inside in _CALL.findall(text or ""):
        whole = whole.transform(_one(name, numbers(inside)))
    return tuple(whole)


def _one(name: str, n: list[float]) -> Any:
    still = Transform()
    match name, n:
        case "matrix", [_, _, _, _, _, _]:
            return Transform(*n)
        case "translate", [x, *y]:
            return still.translate(x, y[0] if y else 0)
        case "scale", [x, *y]:
            return still.scale(x, y[0] if y else x)
        case "rotate", [angle]:
            return still.rotate(_radians(angle))
        case "rotate", [angle, x, y]:
            return still.translate(x, y).rotate(_radians(angle)).translate(-x, -y)
        case "skewX", [angle]:
            return still.skew(_radians(angle), 0)
        case "skewY", [angle]:
            return still.skew(0, _radians(angle))
    return still


def _radians(degrees: float) -> float:
    return degrees * 0.017453292519943295


def times(first: Matrix, second: Matrix) -> Matrix:
    """`second` done first, then `first`: a child's transform inside its parent's."""
    return tuple(Transform(*first).transform(second))


def moved(data: str, by: Matrix) -> str:
    """Path data after a transform; empty where it can't be read or leaves the finite."""
    pen = ShortPen()
    try:
        parse_path(data, TransformPen(pen, by))
    except (ValueError, IndexError, TypeError, AssertionError, NotImplementedError, OverflowError):
        return ""
    return pen.data


def bounds(data: str) -> Box | None:
    """The box round a path, None for an empty one."""
    pen = BoundsPen(None)
    parse_path(data, pen)
    if pen.bounds is None:
        return None
    left, top, right, bottom = pen.bounds
    return Box(left, top, right - left, bottom - top)


@lru_cache(maxsize=10_000)  # steps ask the same of the same view
def inside(data: str, at: Point) -> bool:
    """Whether a point lies inside the closed parts of a path."""
    pen = PointInsidePen(None, at, evenOdd=True)
    steady = RoundingPen(
        pen, roundFunc=_settled
    )  # arcs end a hair off the corner where the next begins
    try:
        parse_path(data, steady)
    except (NotImplementedError, AssertionError):
        return False
    return bool(pen.getResult())


def _settled(value: float) -> float:
    return round(value, 4)
