"""Marks on drawings: empty holes, orders of tightening, the ends of leaders and dimensions."""

from math import cos, pi, sin

from guidebuild.draw.svg import Box, Point, circle, element, number, path, polygon, rect, text


def hole_symbol() -> str:
    """A threaded hole of radius 1, once in each page: its core as a circle, its thread as a thin
    three-quarter ring, a centre cross."""
    core = circle("mid", (0, 0), 0.73) + path("thin", "M0,-1A1,1 0 1 0 1,0")
    return element("g", core, path("ctr", "M-1.8,0H1.8M0,-1.8V1.8"), id="hole")


def empty_hole(at: Point, radius: float) -> str:
    """The hole where a screw is out; it refers to `hole_symbol`."""
    place = f"translate({number(at[0])} {number(at[1])}) scale({number(radius)})"
    return element("use", href="#hole", transform=place)


def order_square(at: Point, figure: str) -> str:
    """A number in a square: the order of tightening, and nothing else."""
    x, y = at
    square = rect("box", Box(x - 4.5, y - 4.5, 9, 9))
    return square + text("ord", (x, y + 2.5), figure, 7)


def arrow_tip(end: Point, towards: float, long: float = 3.1, css: str = "tip") -> str:
    """A filled narrow arrow head that ends at `end`, pointing along the angle `towards` (radians)."""
    x, y = end
    half = long / 6
    c, s = cos(towards), sin(towards)
    back = (x - long * c, y - long * s)
    side = (half * cos(towards + pi / 2), half * sin(towards + pi / 2))
    return path(
        css,
        polygon(
            [end, (back[0] + side[0], back[1] + side[1]), (back[0] - side[0], back[1] - side[1])]
        ),
    )
