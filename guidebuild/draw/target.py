"""Where a leader may touch a thing: a point on its face that nothing else of this step covers."""

from functools import lru_cache

from guidebuild.draw.curve import bounds, inside
from guidebuild.draw.look import Look, Scene
from guidebuild.draw.svg import Box, Point
from guidebuild.draw.view import Drawn, Layer, Shape

_ALONG = 24
_STEPS = (0.5, 0.3, 0.7, 0.15, 0.85)


def face_point(drawn: Drawn, scene: Scene, id: str, region: Box) -> Point:
    """A point (mm) inside the thing's largest outline and inside the region, clear of other groups and holes."""
    shape = _main_shape(drawn, id)
    if shape is None:
        return main_box(drawn, id).centre
    last = max(n for n, layer in enumerate(drawn.layers) if layer.id == id)
    above = [
        layer.box.grown(0.5)
        for layer in drawn.layers[last + 1 :]
        if layer.box and _there(layer, scene)
    ]
    above += [Box(*hole.at, 0, 0).grown(4) for hole in scene.holes]
    over = [box for box in above if box.touches(shape.box)]
    places = [_inside(shape.box, across, down) for down in _STEPS for across in _STEPS]
    open_ = (p for p in places if _holds(region, p) and not any(_holds(box, p) for box in over))
    free = next((p for p in open_ if inside(shape.data, p)), None)
    return free or next((p for p in places if inside(shape.data, p)), shape.box.centre)


def main_box(drawn: Drawn, id: str) -> Box:
    """The box round the thing's largest outline, in mm."""
    shape = _main_shape(drawn, id)
    return shape.box if shape else drawn.box_of(id) or drawn.box


def middle_inside(drawn: Drawn, id: str) -> bool:
    """Whether the middle of the thing's box lies on the thing."""
    shape = _main_shape(drawn, id)
    return shape is None or inside(shape.data, shape.box.centre)


def touching(drawn: Drawn, id: str, start: Point, end: Point) -> Point:
    """The first point (mm) of a line that lies on the thing: a bent cable does not fill its box."""
    shape = _main_shape(drawn, id)
    if shape is None:
        return start
    for i in range(1, _ALONG):
        share = i / _ALONG
        point = (start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1]))
        if inside(shape.data, point):
            return start if i == 1 else point
    return start


@lru_cache(maxsize=10_000)
def _main_shape(drawn: Drawn, id: str) -> Shape | None:
    """The largest piece of the thing's outline; four clips drawn as one path are four pieces."""
    shapes = [shape for layer in drawn.layers if layer.id == id for shape in layer.outline]
    bodies = [shape for shape in shapes if "tube" not in shape.css]
    pieces = [piece for shape in bodies or shapes for piece in _pieces(shape)]
    return max(pieces, key=lambda one: one.box.width * one.box.height, default=None)


def _pieces(shape: Shape) -> list[Shape]:
    """The closed or open runs of a path, each by itself."""
    runs = [f"M{run}" for run in shape.data.split("M") if run]
    if len(runs) < 2:
        return [shape]
    boxes = [(run, bounds(run)) for run in runs]
    return [Shape(shape.css, run, box) for run, box in boxes if box] or [shape]


def _inside(box: Box, across: float, down: float) -> Point:
    return box.x + across * box.width, box.y + down * box.height


def _holds(box: Box, point: Point) -> bool:
    return box.x < point[0] < box.right and box.y < point[1] < box.bottom


def _there(layer: Layer, scene: Scene) -> bool:
    look = scene.looks.get(layer.id or "", Look.FITTED)
    return layer.id is not None and look not in {Look.AWAY, Look.HIDDEN}
