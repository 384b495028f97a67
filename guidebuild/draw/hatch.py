"""Hatching at 45 degrees: charged or live. The patterns stand once in each page that shows drawings."""

from guidebuild.draw.svg import element, line, path

_SIZES = {"hatch-fine": 1.3, "hatch": 2.6, "hatch-wide": 5.2}  # distance in units of the drawing
_STROKE = 0.16  # of the distance


def hatch_class(scale: float) -> str:
    """The class whose lines stand 2 to 4 units apart on the sheet, where one mm is `scale` units."""
    return min(_SIZES, key=lambda name: abs(_SIZES[name] * scale - 2.9))


def patterns_svg() -> str:
    """The patterns that the classes `hatch`, `hatch-fine`, `hatch-wide` and the revision cloud fill with."""
    cloud = element(
        "pattern",
        path("cloud-line", "M14,0A11.4,11.4 0 0 0 14,22"),
        id="cloud",
        width=16,
        height=22,
        patternUnits="userSpaceOnUse",
    )
    hatches = "".join(_pattern(name, distance) for name, distance in _SIZES.items())
    defs = element("defs", hatches, cloud)
    return element("svg", defs, class_="patterns", aria_hidden="true", focusable="false")


def _pattern(name: str, distance: float) -> str:
    stroke = line("h-line", (distance / 2, 0), (distance / 2, distance)).replace(
        "/>", f' stroke-width="{_STROKE * distance:.3g}"/>'
    )
    return element(
        "pattern",
        stroke,
        id=name,
        width=distance,
        height=distance,
        patternUnits="userSpaceOnUse",
        patternTransform="rotate(45)",
    )
