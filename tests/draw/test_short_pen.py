"""Short path data draw what the author drew: measured against fontTools' own reading of both."""

import pytest
from fontTools.pens.areaPen import AreaPen  # type: ignore[import-untyped]
from fontTools.svgLib.path import parse_path  # type: ignore[import-untyped]

from guidebuild.draw.curve import PLAIN, bounds, inside, moved
from guidebuild.draw.shapes import data_of
from guidebuild.draw.svg import Box

PATHS = [
    "M10 10H30V25L12 40Z",
    "M0,0C10,0 20,5 20,30S40,50 60,50",
    "M23 8.5H81C85.69 8.5 89.5 12.31 89.5 17V95.5H14.5V17C14.5 12.31 18.31 8.5 23 8.5Z",
    "M1.111,1.111l.004,.004l.004,.004l.004,.004l.004,.004l50,0l0,50z",  # small steps do not add up
    "M5 5A4 2 0 1 0 13 5A4 2 0 1 0 5 5Z",
]


def area(data: str) -> float:
    """The area that a path encloses."""
    pen = AreaPen()
    parse_path(data, pen)
    return float(pen.value)


@pytest.mark.parametrize("data", PATHS)
def test_box_and_area_stay(data: str) -> None:
    short = moved(data, PLAIN)
    before, after = bounds(data), bounds(short)
    assert before and after
    for side in ("x", "y", "right", "bottom"):
        assert getattr(after, side) == pytest.approx(getattr(before, side), abs=0.02)
    if data.endswith(("z", "Z")):
        assert area(short) == pytest.approx(area(data), rel=5e-3)


def test_a_circle_is_two_arcs() -> None:
    short = moved(data_of("circle", {"cx": "10", "cy": "8", "r": "3"}), PLAIN)
    assert short == "M7,8a3,3 0 0 1 6,0a3,3 0 0 1 -6,0z"
    assert inside(short, (10, 8)) and inside(short, (12.9, 8)) and not inside(short, (12.5, 10.5))


def test_a_rounded_rectangle_keeps_its_corners() -> None:
    attributes = {"x": "1", "y": "2", "width": "20", "height": "10", "rx": "2"}
    short = moved(data_of("rect", attributes), PLAIN)
    assert short.count("a2,2 0 0 1") == 4 and "c" not in short
    assert bounds(short) == Box(1, 2, 20, 10)
    assert inside(short, (1.7, 2.7)) and not inside(short, (1.3, 2.3))


def test_a_turned_circle_stays_round() -> None:
    turned = moved(data_of("circle", {"r": "5"}), (0.6, 0.8, -0.8, 0.6, 0, 0))
    box = bounds(turned)
    assert box and box.width == pytest.approx(10, abs=0.02)


@pytest.mark.parametrize("data", ["M0 0L1e400 3", "Mnan 3L1 1", "M0 0L9e307 9e307"])
def test_what_leaves_the_finite_draws_nothing(data: str) -> None:
    assert moved(data, (1e9, 0, 0, 1e9, 0, 0)) == ""
