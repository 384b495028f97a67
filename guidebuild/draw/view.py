"""A view of a device, read once: shapes in mm, in layers that bear the record's ids.

An author's file is cleaned (see `clean`), its transforms are worked out, and what has no id of the record
belongs to the group around it. A view may also be outlines in the record (SVG path data in mm).
"""

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from xml.etree.ElementTree import Element

from guidebuild.device.record import Device, View
from guidebuild.device.states import Kind
from guidebuild.draw.clean import SHAPES, clean_svg
from guidebuild.draw.curve import PLAIN, Matrix, bounds, matrix, moved, numbers, times
from guidebuild.draw.shapes import classes_of, data_of, own_classes
from guidebuild.draw.sight import Sight, sight
from guidebuild.draw.svg import Box, Point, number

_DEEP = 40  # groups inside groups; a deeper file is cut off there


@dataclass(frozen=True, slots=True)
class Shape:
    """One line or face. `outer`: on the outline of its thing, not inside another of its shapes."""

    css: str
    data: str
    box: Box
    outer: bool = False


@dataclass(frozen=True, slots=True)
class Words:
    """Lettering on the device itself (`F6` on a label)."""

    css: str
    at: Point
    words: str
    size: float


@dataclass(frozen=True, slots=True, eq=False)
class Layer:
    """Neighbouring shapes of one thing in painting order; `id` is None for what is no thing of the record.

    `box` is round its shapes, None where it has only lettering.
    """

    id: str | None
    shapes: tuple[Shape, ...]
    words: tuple[Words, ...] = ()
    box: Box | None = None

    @property
    def outline(self) -> tuple[Shape, ...]:
        """Its outer shapes."""
        return tuple(shape for shape in self.shapes if shape.outer)

    @property
    def inside(self) -> tuple[Shape, ...]:
        """All the others."""
        return tuple(shape for shape in self.shapes if not shape.outer)

    @property
    def plain(self) -> bool:
        """Whether there is nothing inside its outline."""
        return not self.words and all(shape.outer for shape in self.shapes)


@dataclass(frozen=True, slots=True, eq=False)
class Drawn:
    """A view ready to be drawn; it is equal to itself only, so that what was drawn of it is soon found again.

    `name` is unique in a device; `size` in mm; `box` is round all shapes.

    `boxes` are round all layers of a thing, by id; `sight` is what the record says of what is seen.
    """

    name: str
    size: tuple[float, float]
    box: Box
    layers: tuple[Layer, ...]
    boxes: Mapping[str, Box]
    sight: Sight

    def box_of(self, id: str) -> Box | None:
        """The box round all layers of a thing, None where the view does not show it."""
        return self.boxes.get(id)


def read_view(device: Device, view: View, svg: str | None) -> Drawn:
    """The view as shapes in mm. `svg` is its file's text; None where the record's outlines are the view."""
    width, height = float(view.size[0]), float(view.size[1])
    if svg is None:
        found = _outlined(device, view)
    else:
        root = clean_svg(svg)
        found = _merged(_walk(root, _to_mm(root, width, height), None, "", device.names, 0))
    layers = tuple(_with_outlines(layer) for layer in found)
    boxes = [layer.box for layer in layers if layer.box]
    whole = _round(boxes) if boxes else Box(0, 0, width, height)
    if not whole.width or not whole.height:  # a single line is no drawing to fit
        whole = Box(0, 0, width, height)
    known = _boxes(layers)
    ids = dict.fromkeys(layer.id for layer in layers if layer.id)
    return Drawn(view.id, (width, height), whole, layers, known, sight(device, view, ids, known))


def _boxes(layers: tuple[Layer, ...]) -> dict[str, Box]:
    found: dict[str, list[Box]] = {}
    for layer in layers:
        if layer.id and layer.box:
            found.setdefault(layer.id, []).append(layer.box)
    return {id: _round(boxes) for id, boxes in found.items()}


def _to_mm(root: Element, width: float, height: float) -> Matrix:
    """From the file's units to mm: its `viewBox` (or size) is the view's size."""
    given = numbers(root.get("viewBox"))
    if len(given) != 4 or given[2] <= 0 or given[3] <= 0:
        sizes = numbers(root.get("width"))[:1] + numbers(root.get("height"))[:1]
        given = [0, 0, *sizes] if len(sizes) == 2 and min(sizes) > 0 else [0, 0, width, height]
    x, y, wide, high = given
    return (width / wide, 0, 0, height / high, -x * width / wide, -y * height / high)


def _walk(
    node: Element, at: Matrix, id: str | None, css: str, known: Collection[str], depth: int
) -> Iterator[Layer]:
    """Each shape as a layer of its own, under the nearest group that the record knows."""
    at = times(at, matrix(node.get("transform"))) if node.tag != "svg" or depth else at
    if node.get("id") in known:
        id = node.get("id")
    if node.tag in SHAPES:
        yield from _shape(node, at, id, css)
    elif depth < _DEEP:
        own = own_classes(node.get("class")) or css
        for child in node:
            yield from _walk(child, at, id, own, known, depth + 1)


def _shape(node: Element, at: Matrix, id: str | None, css: str) -> Iterator[Layer]:
    classes = classes_of(str(node.tag), node.attrib, css)
    if node.tag == "text":
        yield from _words(node, at, id, classes)
        return
    data = moved(data_of(str(node.tag), node.attrib), at)
    box = bounds(data) if data else None
    if box is not None and (box.width or box.height):
        yield Layer(id, (Shape(classes, data, box),))


def _words(node: Element, at: Matrix, id: str | None, css: str) -> Iterator[Layer]:
    x, y = (numbers(node.get("x")) or [0.0])[0], (numbers(node.get("y")) or [0.0])[0]
    a, b, c, d, e, f = at
    said = " ".join("".join(node.itertext()).split())
    size = (numbers(node.get("font-size")) or [5.0])[0] * abs(d)
    if said:
        yield Layer(id, (), (Words(css, (a * x + c * y + e, b * x + d * y + f), said, size),))


def _merged(layers: Iterator[Layer]) -> list[Layer]:
    """Neighbours of one id become one layer."""
    found: list[Layer] = []
    for layer in layers:
        if found and found[-1].id == layer.id:
            last = found.pop()
            layer = Layer(layer.id, last.shapes + layer.shapes, last.words + layer.words)
        found.append(layer)
    return found


def _outlined(device: Device, view: View) -> list[Layer]:
    """The record's outlines, the largest at the back: the base in wide line with a wall, the rest in mid."""
    found = []
    for id, given in view.outline.items():
        data = moved(given, PLAIN)
        box = bounds(data) if data else None
        if box is None or id not in device.names:
            continue
        base = device.base in device.names[id]
        shapes = [Shape("wide solid" if base else "mid solid", data, box)]
        if base:
            shapes.append(_wall(data, box))
        if device.things[device.names[id][0]].kind is Kind.CONNECTOR:
            shapes.append(_rib(box))
        found.append((base, box.width * box.height, Layer(id, tuple(shapes))))
    found.sort(key=lambda one: (not one[0], -one[1]))
    return [layer for _, _, layer in found]


def _wall(data: str, box: Box) -> Shape:
    """The inner edge of a housing, so that a bare outline reads as a body."""
    thick = min(2.0, 0.05 * min(box.width, box.height))
    across, down = 1 - 2 * thick / box.width, 1 - 2 * thick / box.height
    x, y = box.centre
    inner = moved(data, (across, 0, 0, down, x * (1 - across), y * (1 - down)))
    return Shape("thin", inner, box.grown(-thick))


def _rib(box: Box) -> Shape:
    """The rib along a plug, by which it is told from a part."""
    if box.width >= box.height:
        y = box.y + 0.3 * box.height
        data = f"M{number(box.x)},{number(y)}H{number(box.right)}"
        return Shape("thin", data, Box(box.x, y, box.width, 0))
    x = box.x + 0.3 * box.width
    data = f"M{number(x)},{number(box.y)}V{number(box.bottom)}"
    return Shape("thin", data, Box(x, box.y, 0, box.height))


def _with_outlines(layer: Layer) -> Layer:
    """Marks the shapes that lie inside no other one of the layer: its outline.

    What is no thing of the record is never restyled, so its painting order is left alone.
    """
    box = _round([shape.box for shape in layer.shapes]) if layer.shapes else None
    if layer.id is None:
        return replace(layer, box=box)
    edges = [s for s in layer.shapes if {"wide", "mid", "tube"} & set(s.css.split())]
    edges = edges or list(layer.shapes)  # hooks under a lid are hidden edges and nothing else
    outer, mine = _outermost(edges), {id(edge) for edge in edges}
    shapes = tuple(replace(s, outer=id(s) in mine and s.box in outer) for s in layer.shapes)
    return Layer(layer.id, shapes, layer.words, box)


def _outermost(shapes: Sequence[Shape]) -> frozenset[Box]:
    """The boxes that lie in no clearly larger one: compared with the largest first, and with these alone,
    since what lies in a box that was left out lies in what holds that one, too.
    """
    by_area = sorted({one.box: one.box.width * one.box.height for one in shapes}.items(), key=_area)
    found: list[tuple[Box, float]] = []
    for box, area in by_area:
        if not any(large > area * 1.02 and outer.holds(box) for outer, large in found):
            found.append((box, area))
    return frozenset(box for box, _ in found)


def _area(one: tuple[Box, float]) -> float:
    return -one[1]


def _round(boxes: list[Box]) -> Box:
    left, top = min(box.x for box in boxes), min(box.y for box in boxes)
    right, bottom = max(box.right for box in boxes), max(box.bottom for box in boxes)
    return Box(left, top, right - left, bottom - top)
