"""Samples for the legend: what the lines and marks of the drawings mean."""

from guidebuild.draw.marks import empty_hole, order_square
from guidebuild.draw.svg import Box, circle, drawing, line, rect


def key_svg(kind: str) -> str:
    """A sample for the legend: `now`, `mid`, `off`, `hatch`, `hole`, `ring`, `order`."""
    middle = (30.0, 11.0)
    match kind:
        case "hatch":
            sample = rect("mid hatch", Box(3, 3, 54, 16))
        case "hole":
            sample = empty_hole(middle, 3.6)
        case "ring":
            sample = circle("mid", middle, 5) + circle("now", middle, 8.2)
        case "order":
            sample = order_square(middle, "1")
        case _:
            sample = line(kind, (2, 11), (58, 11))
    return drawing("key", Box(0, 0, 60, 22), sample)
