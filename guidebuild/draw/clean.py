"""An author's SVG cut down to shapes: no script, no style sheet, no link, no picture, nothing from outside.

nh3 (a port of a browser's HTML parser) reads whatever was given and keeps only the elements and attributes
listed here; what it gives back is well-formed, so the standard library may read it: entities and DOCTYPE
are gone by then.
"""

from xml.etree import ElementTree

import nh3

SHAPES = frozenset({"path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text"})
_ELEMENTS = {"svg", "g", *SHAPES}
_ATTRIBUTES = (
    "id class transform style fill stroke d points x y width height cx cy r rx ry x1 y1 x2 y2"
    " font-size text-anchor"
)
_LISTED = {"*": set(_ATTRIBUTES.split()), "svg": {"viewBox"}}
_EMPTIED = {
    "script",
    "style",
    "title",
    "desc",
    "metadata",
    "defs",
    "foreignobject",
    "symbol",
    "marker",
}


def clean_svg(text: str) -> ElementTree.Element:
    """The drawing's tree with safe elements and attributes only; an empty `svg` where there is no drawing."""
    kept = nh3.clean(
        text,
        tags=_ELEMENTS,
        attributes=_LISTED,
        clean_content_tags=_EMPTIED,
        strip_comments=True,
    )
    start, end = kept.find("<svg"), kept.rfind("</svg>")
    if start < 0 or end < start:
        return ElementTree.Element("svg")
    try:
        return ElementTree.fromstring(kept[start : end + 6].replace("&nbsp;", "&#160;"))
    except ElementTree.ParseError:
        return ElementTree.Element("svg")
