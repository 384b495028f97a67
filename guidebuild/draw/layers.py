"""The groups of a view, each in the look that it has at a step."""

from collections.abc import Iterator
from functools import lru_cache

from guidebuild.draw.curve import inside
from guidebuild.draw.frame import Frame
from guidebuild.draw.hatch import hatch_class
from guidebuild.draw.look import Look, Scene
from guidebuild.draw.svg import Box, circle, path, use
from guidebuild.draw.view import Drawn, Layer, Shape
from guidebuild.draw.view_symbols import inner, layer_id


def layers(drawn: Drawn, scene: Scene, where: Frame) -> list[str]:
    """All layers that touch the frame, in mm, a piece each; after them, over the rest, those that are away."""
    hatch = hatch_class(where.scale)
    here, away = [], []
    for n, layer in enumerate(drawn.layers):
        look = scene.looks.get(layer.id, Look.FITTED) if layer.id else Look.FITTED
        shown = _in_frame(layer, where)
        off = shown and look is Look.AWAY
        here.append(_drawn(layer, layer_id(drawn, n), look, hatch) if shown and not off else "")
        away.append(_outline(layer, "off") if off else "")
    return here + away


def _in_frame(layer: Layer, where: Frame) -> bool:
    return not where.cut or layer.box is None or layer.box.touches(where.region)


@lru_cache(maxsize=10_000)  # a thing has few looks, and many steps
def _drawn(layer: Layer, id: str, look: Look, hatch: str) -> str:
    match look:
        case Look.FITTED | Look.AWAY:
            return use(id)
        case Look.HIDDEN:
            return ""
        case Look.NOW:
            return _outline(layer, "now") + ("" if layer.plain else use(inner(id)))
        case Look.LIVE:
            return use(id) + _outline(layer, hatch)
        case Look.LIVE_NOW:
            marked = _outline(layer, hatch) + _outline(layer, "now", solid=False)
            return use(id) + marked
        case Look.OPEN:
            return "".join(_pins(layer))


@lru_cache(maxsize=10_000)
def _outline(layer: Layer, css: str, solid: bool = True) -> str:
    """The outer shapes in another line; a face stays a face, but nothing inside a chain line."""
    return "".join(
        path(f"{css} solid" if solid and css == "now" and "solid" in shape.css else css, shape.data)
        for shape in layer.outline
    )


def _pins(layer: Layer) -> Iterator[str]:
    """A plug that is out: the thin outline of its socket with a row of pins; its cable is gone with it."""
    for shape in filter(_is_a_body, layer.outline):
        yield path("thin solid", shape.data)
        yield from _row(shape.box)


def _is_a_body(shape: Shape) -> bool:
    """Whether a shape fills its box, as a socket does and a bent cable does not."""
    box = shape.box
    corners = [
        (box.x + a * box.width, box.y + b * box.height) for a in (0.2, 0.8) for b in (0.2, 0.8)
    ]
    return "tube" not in shape.css and all(inside(shape.data, corner) for corner in corners)


def _row(box: Box) -> Iterator[str]:
    long, short = max(box.width, box.height), min(box.width, box.height)
    count = max(2, min(10, round(long / max(short, 1e-6) * 1.5)))
    radius = min(0.16 * short, 0.3 * long / count)
    x, y = box.centre
    for i in range(count):
        along = long * ((i + 0.5) / count - 0.5)
        at = (x + along, y) if box.width >= box.height else (x, y + along)
        yield circle("ink", at, radius)
