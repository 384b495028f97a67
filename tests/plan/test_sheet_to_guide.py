"""From a filled strip-down sheet to guides without findings, with nothing written by hand between."""

from pathlib import Path

import pytest

from guidebuild.build.check import check
from guidebuild.build.drafting import Asked, drafted
from guidebuild.cli.main import main
from guidebuild.plan.start.strip import read_strip
from guidebuild.read.content import read_content
from tests.plan.sheets import CLOSER, LAMP

SHEETS = {"Body": CLOSER, "Lamp base": LAMP}
GOALS = ("replace", "remove", "inspect", "clean", "adjust")


def started(sheet: str, base: str, root: Path) -> Path:
    """A content folder with the device `d` from this sheet."""
    (root / "strip.csv").write_text(sheet, encoding="utf-8")
    words = ["--base", base, "--from", str(root / "strip.csv"), "--content", str(root / "content")]
    assert main(["new", "device", "d", "--name", "D one closer", *words]) == 0
    return root / "content"


@pytest.mark.parametrize("base", SHEETS)
def test_every_part_and_goal_has_a_draft_without_findings(base: str, tmp_path: Path) -> None:
    root = started(SHEETS[base], base, tmp_path)
    device = read_content(root)[0].devices["d"]
    parts = [part.id for part in device.parts if part.id != device.base and not part.outside]
    (root / "guides/d").mkdir(parents=True)
    for part in parts:
        for goal in GOALS:
            _, text, _ = drafted(root, Asked("d", part, goal))
            (root / f"guides/d/{goal}-{part}.md").write_text(text, encoding="utf-8")
    result = check(root, cache=False)
    assert not result.findings, result.findings[0]
    assert result.configurations == len(parts) * len(GOALS)


def test_what_the_closer_holds_is_in_its_record(tmp_path: Path) -> None:
    device = read_content(started(CLOSER, "Body", tmp_path))[0].devices["d"]
    stores = {store.id: store for store in device.stores}
    assert [said.text for said in stores["spring-load"].guards] == ["end-cap"]
    oil = stores["damping-oil"]
    assert oil.through is not None
    assert oil.through.text == "drain-plug-screw"
    assert stores["closing-speed"].store == "calibration"
    hole = next(hole for hole in device.holes if hole.key == "end-cap-screws.1")
    torque = hole.torque[0].value.figure
    assert torque is not None
    assert f"{torque.value} {torque.unit}" == "6 N·m"
    hazard = device.hazards["spring-load-hazard"]
    assert hazard.level == "warning"
    assert {said.text for said in hazard.when_handling} == {
        "spring-load", "end-cap-screws", "end-cap",
    }  # fmt: skip
    assert device.functions["closing"].text == "Closing"


def test_sizes_make_views_in_which_each_screw_lies_on_its_part(tmp_path: Path) -> None:
    device = read_content(started(CLOSER, "Body", tmp_path))[0].devices["d"]
    assert {view.id for view in device.views.values()} == {"apart-1", "apart-2"}
    placed = 0
    for view in device.views.values():
        assert "body" in view.outline
        holes = (one for one in device.holes if one.view is not None and one.view.text == view.id)
        for hole in holes:
            x, y = hole.xy or (-1, -1)
            assert 0 < x < view.size[0]
            assert 0 < y < view.size[1]
            placed += 1
    assert placed == len(device.holes)


def test_mains_and_charge_are_gone_first(tmp_path: Path) -> None:
    root = started(LAMP, "Lamp base", tmp_path)
    _, text, _ = drafted(root, Asked("d", "ballast"))
    order = ("disconnect: mains-plug", "release: charge-of-the-board", "remove: upper-glass-hood")
    places = [text.index(words) for words in order]
    assert places == sorted(places)


@pytest.mark.parametrize(
    ("column", "cell", "words"),
    [
        ("torque", "6 mm", "no torque"),
        ("torque", "tight", "no torque"),
        ("size", "60", "no size"),
        ("size", "0x4", "no size"),
        ("hazard", "The spring pushes.", "signal word"),
        ("hazard", "warning: One sentence.", "three sentences"),
        ("works", "Closing", "line of a plug"),
    ],
)
def test_a_cell_that_can_not_be_read_is_told(column: str, cell: str, words: str) -> None:
    _, slips = read_strip(f"part,held by,{column}\nCap,spring,{cell}\n")
    assert [(one.line, one.column) for one in slips] == [(2, column)]
    assert words in slips[0].words


def test_a_line_end_inside_a_cell_is_a_space(tmp_path: Path) -> None:
    sheet = 'part,held by,called\n"Upper\ncover",screw,"Long\r\nscrew"\n'
    device = read_content(started(sheet, "Body", tmp_path))[0].devices["d"]
    assert [part.id for part in device.parts] == ["body", "upper-cover"]
    assert "long-screw" in device.groups


def test_a_second_device_adds_its_tools_to_the_folder(tmp_path: Path) -> None:
    root = started(CLOSER, "Body", tmp_path)
    before = (root / "tools.yaml").read_text(encoding="utf-8")
    (tmp_path / "lamp.csv").write_text(LAMP, encoding="utf-8")
    words = ["--from", str(tmp_path / "lamp.csv"), "--base", "Lamp base", "--content", str(root)]
    assert main(["new", "device", "lamp", *words]) == 0
    after = (root / "tools.yaml").read_text(encoding="utf-8")
    assert after.startswith(before)
    assert after.removeprefix(before).count("fits: PH") == 2
