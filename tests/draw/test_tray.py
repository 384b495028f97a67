"""The tray sheet is true to size: each screw as long as designated, the rule as long as it says."""

import re

import pytest

from guidebuild.draw.alike import Lookalike, alike_scale, alike_svg
from guidebuild.draw.screw import screw_id, screw_symbols
from guidebuild.draw.tray import lie_height, lie_svg, rule_svg
from tests.draw.reading import extent, millimetres, of_class, tree, view_box
from tests.outside.screws import screw

SCREWS = {
    "M4x20 pan TX20": 20,
    "M1.6x3 pan PH00": 3,
    "M2.5x8 countersunk TX8": 8,
    "ST2.2x6.5 pan PH0": 6.5,
}


@pytest.mark.parametrize(("words", "length"), SCREWS.items())
def test_measured_length_is_the_designation(words: str, length: float) -> None:
    one = screw(words)
    sheet = tree(lie_svg(one, 3, "three"))
    assert millimetres(sheet) == pytest.approx(view_box(sheet)[2:], abs=2e-3)  # 1:1
    assert [use.get("href") for use in sheet.iter("use")].count(f"#{screw_id(one)}") == 3
    assert "scale" not in lie_svg(one, 3, "three")
    symbols = tree(f"<g>{screw_symbols(one)}</g>")
    (shadow,) = [node for node in symbols if node.get("id") == screw_id(one)]
    least, most = extent(shadow.get("d", ""), 0)
    assert most - max(0.0, least) == pytest.approx(length, abs=2e-3)
    assert [node.text for node in of_class(sheet, "dim")] == [str(length)]


@pytest.mark.parametrize("count", [1, 8, 14, 40])
def test_many_screws_lie_in_rows_inside_the_drawing(count: int) -> None:
    one = screw("M2.5x8 countersunk TX8")
    sheet = tree(lie_svg(one, count, "many"))
    x, y, width, height = view_box(sheet)
    places = [
        tuple(map(float, re.findall(r"-?[\d.]+", node.get("transform", ""))[:2]))
        for node in sheet.iter("g")
        if "rotate(90)" in node.get("transform", "")
    ]
    assert len(set(places)) == count
    assert width <= 84
    assert height == pytest.approx(lie_height(one, count))
    assert all(x < px < x + width and y <= py and py + 8 <= y + height for px, py in places)


def test_the_rule_is_fifty_millimetres() -> None:
    rule = tree(rule_svg("rule"))
    scale = of_class(rule, "mid")[0].get("d", "")
    least, most = extent(scale, 0)
    assert most - least == 50
    assert millimetres(rule)[0] == view_box(rule)[2] == 54


def test_look_alikes_at_four_to_one_with_their_difference() -> None:
    pair = [Lookalike("1", screw("M3x6 pan PH1")), Lookalike("2", screw("M3x8 pan PH1"))]
    strip = tree(alike_svg(pair, "screws 1 and 2"))
    assert millimetres(strip)[0] / view_box(strip)[2] == pytest.approx(4, abs=1e-3)
    assert [node.text for node in of_class(strip, "differ")] == ["2"]
    assert [node.text for node in of_class(strip, "dim")] == ["6", "8"]
    assert [node.text for node in of_class(strip, "num")] == ["1", "2"]


def test_three_look_alikes() -> None:
    words = ["M2x4 pan TX6", "M2x6 pan TX6", "M2x10 pan TX6"]
    strip = tree(alike_svg([Lookalike(str(i), screw(one)) for i, one in enumerate(words)], "three"))
    assert [node.text for node in of_class(strip, "differ")] == ["2", "4"]


@pytest.mark.parametrize(
    ("pair", "scale"), [("M2x4 M2x6", 4), ("M3x8 M3x12", 3), ("M4x16 M4x20", 2)]
)
def test_long_look_alikes_are_drawn_smaller_with_letters_of_one_size(pair: str, scale: int) -> None:
    screws = [Lookalike("1", screw(f"{one} pan TX10")) for one in pair.split()]
    strip = tree(alike_svg(screws, "two"))
    assert alike_scale(screws) == scale
    assert millimetres(strip)[0] / view_box(strip)[2] == pytest.approx(scale, abs=1e-3)
    assert millimetres(strip)[1] <= 96
    (letters,) = {node.get("font-size") for node in of_class(strip, "num")}
    assert float(letters or 0) * scale == pytest.approx(7.6, abs=0.01)
