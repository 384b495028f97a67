"""The scale bar: a screen has no scale, so a view says how long a round length is."""

from guidebuild.draw.svg import Box, number, path, rect, text

_ROUND = (5, 10, 20, 50, 100, 200, 500)
_LONG = 62.0  # units at most


def scale_bar(right: float, y: float, scale: float) -> str:
    """A bar of a round number of mm that ends at `right`; `scale` is units a mm."""
    length = max((mm for mm in _ROUND if mm * scale <= _LONG), default=_ROUND[0])
    wide = length * scale
    left = right - wide
    fifth = wide / 5
    field = f"h{number(fifth)}v1.5h{number(-fifth)}z"
    fields = path(
        "tip", "".join(f"M{number(left + i * fifth)},{number(y)}{field}" for i in (0, 2, 4))
    )
    ends = text("dim", (left, y - 1.6), "0", 6.4) + text(
        "dim", (right, y - 1.6), f"{length} mm", 6.4
    )
    return rect("thin", Box(left, y, wide, 1.5)) + fields + ends
