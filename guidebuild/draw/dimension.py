"""Dimensions by ISO 129-1: extension lines with a gap, filled narrow arrows, the figure above the line."""

from math import pi

from guidebuild.draw.marks import arrow_tip
from guidebuild.draw.svg import element, line
from guidebuild.draw.svg import text as words


def upright(x: float, start: float, end: float, figure: str, tip: float, size: float) -> str:
    """A dimension along y at `x` between two heights; its figure reads from the right. `tip`: arrow length."""
    middle = (start + end) / 2
    figure_at = element(
        "text",
        figure,
        class_="dim",
        transform=f"translate({x - 0.6 * tip:.3f} {middle:.3f}) rotate(-90)",
        font_size=size,
        text_anchor="middle",
    )
    arrows = arrow_tip((x, start), -pi / 2, tip) + arrow_tip((x, end), pi / 2, tip)
    return line("thin", (x, start), (x, end)) + arrows + figure_at


def from_outside(x: float, start: float, end: float, figure: str, tip: float, size: float) -> str:
    """A short dimension whose arrows come from outside; its figure, in the accent, stands below them."""
    long = 2.4 * tip
    lines = line("thin", (x, start - long), (x, start)) + line("thin", (x, end), (x, end + long))
    arrows = arrow_tip((x, start), pi / 2, tip) + arrow_tip((x, end), -pi / 2, tip)
    return lines + arrows + words("differ", (x + 0.9 * tip, end + long), figure, size, "start")
