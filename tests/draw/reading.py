"""What a drawing holds, read back from its SVG: elements, path corners, the places of words."""

import re
from xml.etree import ElementTree

from fontTools.pens.recordingPen import RecordingPen  # type: ignore[import-untyped]
from fontTools.svgLib.path import parse_path  # type: ignore[import-untyped]

from guidebuild.draw.svg import Point

Element = ElementTree.Element


def tree(svg: str) -> Element:
    """The drawing as a tree; every drawing must be well-formed."""
    return ElementTree.fromstring(svg)


def of_class(root: Element, name: str, tag: str | None = None) -> list[Element]:
    """All elements that bear a class."""
    return [
        one
        for one in root.iter()
        if name in one.get("class", "").split() and (tag is None or one.tag == tag)
    ]


def corners(data: str) -> list[Point]:
    """End points of all segments of a path."""
    pen = RecordingPen()
    parse_path(data, pen)
    return [points[-1] for _, points in pen.value if points]


def extent(data: str, axis: int) -> tuple[float, float]:
    """Least and greatest x (0) or y (1) of a path's corners."""
    values = [corner[axis] for corner in corners(data)]
    return min(values), max(values)


def millimetres(root: Element) -> tuple[float, float]:
    """Width and height of a drawing that says them in mm."""
    return tuple(float(re.sub(r"mm$", "", root.get(name, ""))) for name in ("width", "height"))  # type: ignore[return-value]


def view_box(root: Element) -> tuple[float, float, float, float]:
    """The drawing's own units."""
    x, y, width, height = map(float, root.get("viewBox", "").split())
    return x, y, width, height
