"""Marks on drawings: empty holes, orders of tightening, the ends of leaders and dimensions."""

from math import cos, pi, sin

from guidebuild.draw.svg import Box, Point, circle, line, number, path, polygon, rect, text


def empty_hole(at: Point, radius: float) -> str:
    """A threaded hole: the core as a circle, the thread as a thin three-quarter ring, a centre cross."""
    x, y = at
    reach = 1.8 * radius
    size = f"{number(radius)},{number(radius)}"
    thread = f"M{number(x)},{number(y - radius)}A{size} 0 1 0 {number(x + radius)},{number(y)}"
    cross = line("ctr", (x - reach, y), (x + reach, y)) + line(
        "ctr", (x, y - reach), (x, y + reach)
    )
    return circle("mid", at, 0.73 * radius) + path("thin", thread) + cross


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
