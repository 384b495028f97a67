"""The device as it stands on the bench: the record's first view, everything on it."""

from collections.abc import Mapping

from guidebuild.draw.svg import drawing, element, path
from guidebuild.draw.view import Drawn
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.translate.messages.text import plain

_AIR = 4.0  # mm round the outline


def portrait(reading: Reading, drawn: Mapping[str, Drawn]) -> str:
    """The drawing, complete in itself; empty where the record has no view."""
    view = next(iter(drawn.values()), None)
    if view is None:
        return ""
    shapes = "".join(path(shape.css, shape.data) for layer in view.layers for shape in layer.shapes)
    title = plain(reading.say("picture.title", view=reading.device.name.text))
    return drawing("view portrait", view.box.grown(_AIR), element("g", shapes), title=title)
