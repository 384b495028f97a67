"""Every layer of a view as a symbol, which drawings of the view refer to."""

from collections.abc import Iterable
from functools import lru_cache
from itertools import groupby

from guidebuild.draw.svg import element, path, text
from guidebuild.draw.view import Drawn, Layer, Shape

_LINES = frozenset({"wide", "mid", "thin", "ctr", "hid"})  # without a face


def view_symbols(drawn: Drawn) -> str:
    """Every layer as fitted, once in each page that shows the view: `#v-<name>-<n>`.

    `#v-<name>-<n>-in` is what lies inside its outline, where there is anything.
    """
    return _symbols(drawn)


@lru_cache(maxsize=64)
def _symbols(drawn: Drawn) -> str:
    return "".join(_symbol(drawn, n, layer) for n, layer in enumerate(drawn.layers))


def layer_id(drawn: Drawn, n: int) -> str:
    """Id of a layer's symbol."""
    return f"v-{drawn.name}-{n}"


def inner(id: str) -> str:
    """Id of what lies inside the outline of a layer."""
    return f"{id}-in"


def _symbol(drawn: Drawn, n: int, layer: Layer) -> str:
    id, within = layer_id(drawn, n), layer.inside
    words = "".join(text(one.css, one.at, one.words, one.size) for one in layer.words)
    inside = element("g", paths(within), words, id=inner(id)) if within or words else ""
    return element("g", paths(layer.outline), inside, id=id)


def paths(shapes: Iterable[Shape]) -> str:
    """Shapes in their order; neighbours that are nothing but the same line are one path."""
    said = ""
    for css, run in groupby(shapes, key=lambda shape: shape.css):
        if css in _LINES:
            said += path(css, "".join(shape.data for shape in run))
        else:
            said += "".join(path(css, shape.data) for shape in run)
    return said
