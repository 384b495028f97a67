"""Small drawings: a wait as a dimension, the scale of a value, the squares of the plan, the signs."""

import re

import pytest

from guidebuild.draw.gauge import gauge_svg
from guidebuild.draw.hatch import hatch_class, patterns_svg
from guidebuild.draw.keys import key_svg
from guidebuild.draw.squares import squares_svg, squares_symbol
from guidebuild.draw.symbols import alert_svg, cloud_svg, first_angle_svg, fork_svg, revision_svg
from guidebuild.draw.times import wait_svg
from tests.draw.reading import of_class, tree, view_box


def words(svg: str) -> list[str]:
    return ["".join(node.itertext()) for node in tree(svg).iter("text")]


WAITS = {
    300: ["5 min", "1", "2", "3", "4"],
    90: ["90 s", "10", "20", "30", "40", "50", "60", "70", "80"],
    7200: ["2 h", "1"],
}


@pytest.mark.parametrize(("seconds", "said"), WAITS.items())
def test_a_wait_has_a_tick_each_minute(seconds: int, said: list[str]) -> None:
    assert words(wait_svg(seconds, said[0], "wait")) == said


def test_a_long_wait_is_not_crowded() -> None:
    assert len(words(wait_svg(3600, "60 min", "wait"))) <= 14


# least, most -> the solid bar in per cent of the scale, where hatched fields begin, figures
GAUGES = {
    (None, 5.0): (0, 25, 1, ["5", "0", "20 V"]),
    (10.0, None): (62.5, 100, 1, ["10", "0", "16 V"]),
    (3.0, 3.6): (27.27, 72.73, 2, ["3", "3.6 V", "2.64"]),
}


@pytest.mark.parametrize(("limits", "drawn"), GAUGES.items())
def test_solid_is_allowed_and_hatched_is_not(
    limits: tuple[float | None, float | None], drawn: tuple[float, float, int, list[str]]
) -> None:
    svg = gauge_svg(*limits, "V")
    start, end, fields, figures = drawn
    bar = of_class(tree(svg), "go")[0].get("d", "")
    left, right = (float(one) for one in bar.replace("M", "").split(",14H"))
    assert (left / 2.4, right / 2.4) == pytest.approx((start, end), abs=0.01)
    assert len(of_class(tree(svg), "hatch")) == fields
    assert sorted(words(svg)) == sorted(figures)


def test_squares_count_what_is_out() -> None:
    """Five dashes of 11 with gaps of 5 cover five squares of the row of twelve."""
    row = squares_symbol(12)
    assert row.count("h11v11h-11z") == 12
    (filled,) = of_class(tree(squares_svg(5, 12, "5 of 12")), "t-out")
    assert filled.get("d") == "M.5,7h80"


def test_many_screws_stand_in_rows() -> None:
    corners = re.findall(r"M([\d.]+),([\d.]+)", squares_symbol(100))
    assert len(set(corners)) == 100
    _, _, width, height = view_box(tree(squares_svg(31, 100, "31 of 100")))
    assert all(float(x) + 11 <= width and float(y) + 11 <= height for x, y in corners)
    (filled,) = of_class(tree(squares_svg(31, 100, "31 of 100")), "t-out")
    assert filled.get("d") == "M.5,7h400M.5,23h96"


def test_no_screws_at_all() -> None:
    assert of_class(tree(squares_svg(0, 0, "none")), "t-out") == []
    assert squares_symbol(0) == ""


@pytest.mark.parametrize("ways", [2, 3, 4])
def test_a_fork_has_a_track_for_each_method(ways: int) -> None:
    assert fork_svg(ways).count("V10") == ways
    assert fork_svg(ways, joins=True).count("V5") == ways


def test_a_name_is_given_where_a_drawing_speaks_and_none_where_it_is_an_ornament() -> None:
    speaking = [
        first_angle_svg("First-angle projection"),
        revision_svg("C", "Revision C"),
        squares_svg(1, 2, "one"),
    ]
    for svg in speaking:
        root = tree(svg)
        assert root.get("role") == "img"
        assert root[0].tag == "title" and root[0].text
    for svg in (alert_svg(), cloud_svg(), fork_svg(2), key_svg("now"), patterns_svg()):
        assert tree(svg).get("aria-hidden") == "true"


@pytest.mark.parametrize("kind", ["now", "mid", "off", "hatch", "hole", "ring", "order"])
def test_samples_for_the_legend(kind: str) -> None:
    assert len(tree(key_svg(kind))) >= 1


def test_text_is_escaped() -> None:
    assert "<b>" not in revision_svg("<b>", "a <b> & c")


@pytest.mark.parametrize("scale", [0.4, 0.8, 1.2, 2.0, 6.0])
def test_hatch_lines_keep_their_distance_on_the_sheet(scale: float) -> None:
    distance = {"hatch-fine": 1.3, "hatch": 2.6, "hatch-wide": 5.2}[hatch_class(scale)] * scale
    assert 1.5 < distance < 8
