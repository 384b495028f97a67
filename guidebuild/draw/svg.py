"""SVG as strings: numbers, elements, and a whole drawing with its title and description."""

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cache
from html import escape as escaped
from itertools import pairwise
from typing import TypeAlias

_NEEDLESS = re.compile(
    r"[ ,]+(?=-)"
)  # what parts two numbers of a path where the second has a sign
_WORDS = re.compile("<text|#_|#v-")  # words, or symbols in which words may be
_BLANKS = {ord(one): f"&#{ord(one)};" for one in "\n\r\t"}  # else they would be read as spaces
_SPECIAL = re.compile(r"[&<>\"\n\r\t]")

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle, y down, in the units of its drawing."""

    x: float
    y: float
    width: float
    height: float

    @property
    def right(self) -> float:
        """The greater x."""
        return self.x + self.width

    @property
    def bottom(self) -> float:
        """The greater y."""
        return self.y + self.height

    @property
    def centre(self) -> Point:
        """The middle."""
        return self.x + self.width / 2, self.y + self.height / 2

    def grown(self, by: float) -> "Box":
        """The box with a border of this width round it."""
        return Box(self.x - by, self.y - by, self.width + 2 * by, self.height + 2 * by)

    def touches(self, other: "Box") -> bool:
        """Whether the two share more than an edge."""
        apart_x = self.right <= other.x or other.right <= self.x
        return not (apart_x or self.bottom <= other.y or other.bottom <= self.y)

    def holds(self, other: "Box") -> bool:
        """Whether the other lies inside, edges included."""
        inside_x = self.x <= other.x and other.right <= self.right
        return inside_x and self.y <= other.y and other.bottom <= self.bottom

    @staticmethod
    def round_all(points: Iterable[Point]) -> "Box":
        """The smallest box round these points (at least one)."""
        xs, ys = zip(*points, strict=True)
        return Box(min(xs), min(ys), max(xs) - min(xs), max(ys) - min(ys))


def figure(value: float) -> str:
    """A number as a reader meets it: at most three decimals, no needless zero, never `-0`."""
    text = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


# How the page's language writes a figure; a drawing knows no language.
Write: TypeAlias = Callable[[float], str]


def number(value: float) -> str:
    """A number as SVG takes it, as short as may be: `.5`, for a page has thousands."""
    text = figure(value)
    return text.replace("0.", ".", 1) if text.startswith(("0.", "-0.")) else text


def element(name: str, /, *children: str, **attributes: str | float | None) -> str:
    """One element. `class_` is written `class`, other underscores are hyphens; None leaves one out."""
    said = "".join(
        [
            f" {_name(key)}={_quoted(value if isinstance(value, str) else number(value))}"
            for key, value in attributes.items()
            if value is not None
        ]
    )
    inside = "".join(children)
    return f"<{name}{said}>{inside}</{name}>" if inside else f"<{name}{said}/>"


@cache
def _name(key: str) -> str:
    return key.rstrip("_").replace("_", "-")


def _quoted(value: str) -> str:
    """A page has thousands of attributes, and hardly one with a character that must be escaped."""
    return f'"{escaped(value).translate(_BLANKS)}"' if _SPECIAL.search(value) else f'"{value}"'


def path(class_: str, data: str, **attributes: str | float | None) -> str:
    """A path of a line class."""
    return element("path", class_=class_, d=_NEEDLESS.sub("", data), **attributes)


def line(class_: str, start: Point, end: Point) -> str:
    """A straight line."""
    return path(class_, f"M{pair(start)}L{pair(end)}")


def bent(class_: str, *points: Point) -> str:
    """A line with corners."""
    return path(class_, "M" + "L".join(map(pair, points)))


def circle(class_: str, centre: Point, radius: float) -> str:
    """A circle."""
    return element("circle", class_=class_, cx=centre[0], cy=centre[1], r=radius)


def rect(class_: str, box: Box) -> str:
    """A rectangle."""
    return element("rect", class_=class_, x=box.x, y=box.y, width=box.width, height=box.height)


def text(
    class_: str, at: Point, words: str, size: float | None = None, anchor: str = "middle"
) -> str:
    """Words on the base line `at`; `size` is the height of the type in the drawing's units, unless said around it."""
    return element(
        "text",
        escaped(words, quote=False),
        class_=class_,
        x=at[0],
        y=at[1],
        font_size=size,
        text_anchor=None if anchor == "middle" else anchor,  # the drawing says it once for all
    )


def use(symbol: str, at: Point = (0, 0)) -> str:
    """A symbol that stands once in the page (see `symbols`)."""
    x, y = (value or None for value in at)
    return element("use", href=f"#{symbol}", x=x, y=y)


def drawing(
    class_: str, box: Box, *children: str, title: str = "", description: str = "", mm: float = 0
) -> str:
    """A whole drawing. `mm` is the length of one unit where the drawing is true to size, else 0.

    Without a title it is an ornament that screen readers pass over. Title and description are its first
    children, from which browsers take name and description (SVG-AAM); so no ids are needed.
    """
    said = [element("title", escaped(title, quote=False))] if title else []
    said += [element("desc", escaped(description, quote=False))] if description else []
    return element(
        "svg",
        *said,
        *children,
        class_=class_,
        width=f"{number(box.width * mm)}mm" if mm else None,
        height=f"{number(box.height * mm)}mm" if mm else None,
        viewBox=" ".join(map(number, (box.x, box.y, box.width, box.height))),
        text_anchor="middle" if any(map(_WORDS.search, children)) else None,
        role="img" if title else None,
        aria_hidden=None if title else "true",
    )


def polygon(points: Iterable[Point]) -> str:
    """Closed path data in relative steps; each corner is rounded where it stands, so errors do not add up."""
    corners = [(round(x, 3), round(y, 3)) for x, y in points]
    steps = [f"{number(x - x0)},{number(y - y0)}" for (x0, y0), (x, y) in pairwise(corners)]
    return f"M{pair(corners[0])}l{' '.join(steps)}z"


def pair(point: Point) -> str:
    """A point as path data has it."""
    return f"{number(point[0])},{number(point[1])}"
