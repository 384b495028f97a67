"""The scale bar: a screen has no scale, so a view says how long a round length is."""

from functools import lru_cache

from guidebuild.draw.svg import Box, Point, element, number, path, rect, text

_ROUND = (5, 10, 20, 50, 100, 200, 500)
_LONG = 62.0  # units at most
_HIGH = 6.4  # of the figures


@lru_cache(maxsize=256)
def scale_bar(scale: float) -> str:
    """A bar of a round number of mm that ends at (0, 0); `scale` is units a mm."""
    length = max((mm for mm in _ROUND if mm * scale <= _LONG), default=_ROUND[0])
    wide = round(length * scale, 2)
    fifth = wide / 5
    field = f"h{number(fifth)}v1.5h{number(-fifth)}z"
    fields = path("tip", "".join(f"M{number(i * fifth - wide)},0{field}" for i in (0, 2, 4)))
    ends = text("dim", (-wide, -1.6), "0", _HIGH) + text("dim", (0, -1.6), f"{length} mm", _HIGH)
    return rect("thin", Box(-wide, 0, wide, 1.5)) + fields + ends


def at_foot(bar: str, place: Point) -> str:
    """The bar, or a reference to it, where it stands."""
    return element("g", bar, transform=f"translate({number(place[0])} {number(place[1])})")
