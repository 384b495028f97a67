"""A detail cut out of a view: its freehand edge, and the small overview that says where it lies."""

from dataclasses import dataclass
from functools import lru_cache
from math import sin

from guidebuild.draw.svg import Box, Point, element, number, path, rect
from guidebuild.draw.view import Drawn, Shape

_SMALL = 34.0  # units: width of the overview, at most
_HIGH = 44.0
_GAP = 8.0  # below the cut-out


@dataclass(frozen=True, slots=True)
class Overview:
    """The whole view, small, below the left corner of a cut-out. `box` in mm is round all of it."""

    silhouette: str
    box: Box
    scale: float

    def bottom(self, outline: Box) -> float:
        """How far down it reaches."""
        return outline.bottom + _GAP + self.box.height * self.scale

    def markup(self, silhouette: str, region: Box, outline: Box) -> str:
        """The drawing, with the cut-out's place in heavy line; `silhouette` may be a reference to it."""
        x = outline.x - self.box.x * self.scale
        y = outline.bottom + _GAP - self.box.y * self.scale
        place = f"translate({number(x)} {number(y)}) scale({number(self.scale)})"
        return element("g", silhouette, rect("now", region), transform=place)


@lru_cache(maxsize=64)
def overview(drawn: Drawn) -> Overview:
    """Of a view."""
    scale = min(_SMALL / drawn.box.width, _HIGH / drawn.box.height)
    edges = "".join(path("thin", shape.data) for shape in _silhouette(drawn))
    return Overview(edges, drawn.box, scale)


def cut_edge(outline: Box) -> str:
    """The break line round a cut-out, and paper over what the knife left outside it."""
    edge = _wavy(outline.grown(-1.0))
    frame = outline.grown(1.5)
    sheet = (
        f"M{number(frame.x)},{number(frame.y)}H{number(frame.right)}V{number(frame.bottom)}"
        f"H{number(frame.x)}Z"
    )
    cover = element("path", class_="solid", fill_rule="evenodd", d=sheet + edge)
    return cover + path("mid", edge)


def _wavy(box: Box) -> str:
    """A closed freehand line: always the same for the same box."""
    corners = [(box.x, box.y), (box.right, box.y), (box.right, box.bottom), (box.x, box.bottom)]
    points = []
    for (x0, y0), (x1, y1) in zip(corners, [*corners[1:], corners[0]], strict=True):
        length = abs(x1 - x0) + abs(y1 - y0)
        count = max(2, round(length / 9))
        for i in range(count):
            share = i / count
            sway = 0.7 * sin(5.1 * i + x0 + 2 * y0) if i else 0.0
            across = (y1 - y0) / length * sway, (x1 - x0) / length * sway
            points.append((x0 + share * (x1 - x0) + across[0], y0 + share * (y1 - y0) + across[1]))
    return _smooth(points)


def _smooth(points: list[Point]) -> str:
    """Quadratic curves through the middles between neighbours."""
    middles = [
        ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
        for a, b in zip(points, [*points[1:], points[0]], strict=True)
    ]
    start = middles[-1]
    curves = "".join(
        f"Q{number(p[0])},{number(p[1])} {number(m[0])},{number(m[1])}"
        for p, m in zip(points, middles, strict=True)
    )
    return f"M{number(start[0])},{number(start[1])}{curves}Z"


def _silhouette(drawn: Drawn) -> list[Shape]:
    """The largest shape of the view and what stands out of it."""
    edges = [
        shape
        for layer in drawn.layers
        for shape in layer.shapes
        if "mid" in shape.css or "wide" in shape.css
    ]
    return [
        shape
        for shape in edges
        if not any(other is not shape and other.box.holds(shape.box) for other in edges)
    ]
