"""Segments in the plane: whether two cross, whether one keeps clear of a point."""

from math import hypot

from guidebuild.draw.svg import Point

Segment = tuple[Point, Point]


def _turn(a: Point, b: Point, c: Point) -> float:
    """Twice the area of a triangle: its sign says on which side of ab the point c lies."""
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def crosses(first: Segment, second: Segment) -> bool:
    """Whether two segments have a point in common."""
    (a, b), (c, d) = first, second
    if max(a[0], b[0]) < min(c[0], d[0]) or max(c[0], d[0]) < min(a[0], b[0]):
        return False
    if max(a[1], b[1]) < min(c[1], d[1]) or max(c[1], d[1]) < min(a[1], b[1]):
        return False
    return _turn(a, b, c) * _turn(a, b, d) <= 0 and _turn(c, d, a) * _turn(c, d, b) <= 0


def clear_of(segment: Segment, point: Point, distance: float) -> bool:
    """Whether a segment stays at least this far from a point."""
    (x0, y0), (x1, y1) = segment
    dx, dy = x1 - x0, y1 - y0
    along = dx * dx + dy * dy
    share = 0.0 if not along else ((point[0] - x0) * dx + (point[1] - y0) * dy) / along
    share = min(1.0, max(0.0, share))
    return hypot(x0 + share * dx - point[0], y0 + share * dy - point[1]) >= distance
