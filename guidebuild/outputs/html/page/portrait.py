"""The device as it stands on the bench: the record's first view, everything on it.

A view that is only outlines in the record has no screw and no axis of its own: both are drawn from what the record
says, so that a first sketch looks drawn.
"""

from collections.abc import Iterator, Mapping

from guidebuild.device.record import View
from guidebuild.device.things import Hole
from guidebuild.draw.screw import from_above
from guidebuild.draw.svg import Box, drawing, element, number, path
from guidebuild.draw.view import Drawn
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.translate.messages.text import plain

_AIR = 4.0  # mm round the outline
_PASSES = 0.05  # of the height: how far a centre line passes the edge
_STRAIGHT = 0.5  # mm: outlines whose middles lie so near are about one axis


def portrait(reading: Reading, drawn: Mapping[str, Drawn]) -> str:
    """The drawing, complete in itself; empty where the record has no view."""
    view = next(iter(drawn.values()), None)
    if view is None:
        return ""
    shapes = "".join(path(shape.css, shape.data) for layer in view.layers for shape in layer.shapes)
    record = reading.device.views[view.name]
    if record.file is None:
        shapes += "".join(_screws(reading, record)) + _axis(view)
    title = plain(reading.say("picture.title", view=reading.device.name.text))
    return drawing("view portrait", view.box.grown(_AIR), element("g", shapes), title=title)


def _screws(reading: Reading, view: View) -> Iterator[str]:
    """The heads that can be seen from outside, in every kind of the device."""
    for hole in reading.device.holes:
        known = {said.value.text: said.value for said in hole.screw}
        here = hole.view is not None and hole.view.text == view.id
        if hole.xy and here and len(known) == 1 and _in_sight(reading, hole):
            x, y = (number(float(side)) for side in hole.xy)
            head = from_above(next(iter(known.values())))
            yield element("g", head, transform=f"translate({x} {y})")


def _in_sight(reading: Reading, hole: Hole) -> bool:
    """Whether neither the hole nor what it goes through lies behind anything."""
    if hole.when is not None or hole.behind:
        return False
    device = reading.device
    parts = (device.things[key] for said in hole.ends for key in device.names.get(said.text, ()))
    return not hole.behind_inherits or not any(part.behind for part in parts)


def _axis(view: Drawn) -> str:
    """The centre line of a view whose outlines all lie about one upright axis."""
    boxes = [layer.box for layer in view.layers if layer.box]
    x = view.box.centre[0]
    if len(boxes) < 2 or any(abs(box.centre[0] - x) > _STRAIGHT for box in boxes):
        return ""
    return path("ctr", _line(x, view.box))


def _line(x: float, box: Box) -> str:
    over = min(_PASSES * box.height, _AIR - 1)
    return f"M{number(x)},{number(box.y - over)}V{number(box.bottom + over)}"
