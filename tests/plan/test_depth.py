"""Depths of the demo devices, told as table, data and drawing."""

import json
import xml.etree.ElementTree as ElementTree
from decimal import Decimal

import pytest

from guidebuild.build.depth import depth_of
from guidebuild.cli.main import main
from guidebuild.plan.depth.chart import chart
from guidebuild.plan.depth.classes import tool_class
from guidebuild.plan.depth.table import Index, as_data, index, table
from guidebuild.plan.draft.names import name, title
from guidebuild.plan.index import LABEL
from tests.plan.drafted import CONTENT


def row(device: str, part: str):  # type: ignore[no-untyped-def]
    _, rows = depth_of(CONTENT, device)
    return next(one for one in rows if one.depth.part == part)


def test_a_label_roll_lies_two_parts_deep_and_needs_no_tool() -> None:
    one = row("larch-p2", "roll")
    assert (one.depth.steps, one.depth.off, one.depth.tools) == ((2, 2), ("lid", "roll"), ())
    assert (one.fasteners, one.tools, one.points) == ("reusable", "no tools", (5, 5, 5))


def test_revisions_differ_by_the_bracket() -> None:
    """Revision B has a stiffening bracket over the plug plate: one part more."""
    least, most = row("larch-p2", "print-head").depth.steps
    assert most == least + 1


def test_what_the_kit_brings_new_is_resupplied_and_what_none_brings_is_only_removable() -> None:
    assert row("brindle-e4", "control-board").fasteners == "resupplied"
    assert row("brindle-e4", "fan").fasteners == "removable"


def test_by_hand_count_of_the_fan() -> None:
    """Six cover screws with one driver, then the cover; the fan has no screw of its own: 2 steps, no change of tool."""
    one = row("brindle-e4", "fan").depth
    assert (one.steps, one.taken_out, one.changes, one.materials) == ((2, 2), 6, 0, ("cover-seal",))


@pytest.mark.parametrize(
    ("names", "kind"),
    [
        ((), "no tools"),
        (("Screwdriver TX8", "Plastic spudger"), "basic tools"),
        (("Screwdriver TX8", "Pry card"), "commercially available tools"),
    ],
)
def test_the_worst_tool_gives_the_class(names: tuple[str, ...], kind: str) -> None:
    assert tool_class(names, ()) == kind
    assert tool_class(names, names) == ("supplied with the spare part" if names else "no tools")


def test_the_index_needs_what_only_the_author_knows() -> None:
    _, rows = depth_of(CONTENT, "larch-p2")
    without = index(rows, {"battery": "BAT"}, {}, False)
    assert without.index is None
    assert without.parameters["SDD"] == Decimal("5.00")
    given = dict.fromkeys(("SSP", "SSU", "SRI"), Decimal(3))
    assert index(rows, {"battery": "BAT"}, given, False).index is not None


def test_data_holds_no_binary_fractions() -> None:
    device, rows = depth_of(CONTENT, "larch-p2")
    text = json.dumps(as_data(device, rows, Index({"SDD": Decimal("3.585")}, None, "")))
    assert '"3.585"' in text
    assert LABEL in text


def test_the_table_has_a_line_for_each_part() -> None:
    device, rows = depth_of(CONTENT, "larch-p2")
    lines = table(device, rows).splitlines()
    assert [line.split("  ")[0] for line in lines[1 : len(rows) + 1]] == [
        title(name(device, row.depth.part)) for row in rows
    ]
    assert lines[-1].startswith("Tools: 1 Screwdriver PH1, 2 ")
    assert max(map(len, lines[:-1])) <= 100


def test_the_drawing_marks_exactly_what_comes_off() -> None:
    device, rows = depth_of(CONTENT, "larch-p2")
    drawing = ElementTree.fromstring(chart(device, [one.depth for one in rows], LABEL))
    marks = [one for one in drawing.iter("{http://www.w3.org/2000/svg}rect") if len(one)]
    assert len(marks) == sum(len(one.depth.off) for one in rows)


def test_the_command_says_that_it_is_an_estimate(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["depth", "brindle-e4", "--content", str(CONTENT)]) == 0
    assert "not a declared index" in capsys.readouterr().out


@pytest.mark.parametrize(
    "words",
    [["--role", "battery=CPU"], ["--role", "x=BAT"], ["--given", "SSP=9"], ["--given", "SSP=NaN"]],
)
def test_what_can_not_be_is_told(words: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["depth", "larch-p2", "--content", str(CONTENT), *words]) == 2
    assert "guidebuild: " in capsys.readouterr().err
