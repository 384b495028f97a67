"""Files to start from pass the checks as they are; a strip-down sheet becomes a record."""

from pathlib import Path

import pytest

from guidebuild.build.check import check
from guidebuild.build.starting import strip
from guidebuild.build.trouble import Trouble
from guidebuild.cli.main import main
from guidebuild.plan.start.sheet import ROWS, blank, sheet
from guidebuild.plan.start.strip import COLUMNS, HELD_BY, read_strip
from guidebuild.read.content import read_content

PUMP = """\
no,part,on,under,held by,to,screw,count,tool,picture,note
1,Guard,,,screws,,M4x10 pan TX20,4,TX20,1,
1,,,,seal,,,1,,,a flat gasket
2,Belt,,Guard,nothing,,,,,2,
3,Pump head,,Guard,screws,,M5x16 cylinder hex 4,4,hex 4,3,
3,,,,o-ring,,,1,,,
4,Impeller,Pump head,,captive screw,,M3x8 pan TX10,1,TX10,4,
5,Motor,,Guard+Belt,screws,,M5x20 cylinder hex 4,2,,5,
5,,,,plug,Control board,,1,Plastic spudger,,
"""


def run(*words: str) -> int:
    return main(list(words))


def test_from_nothing_to_a_checked_guide(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    Path("strip.csv").write_text(PUMP, encoding="utf-8")
    assert run("new", "device", "alder-5", "--name", "Alder 5 pump", "--from", "strip.csv") == 0
    assert run("new", "kit", "alder-impeller", "--brings", "impeller") == 0
    assert run("new", "guide", "alder-5", "--part", "impeller") == 0
    result = check(Path("content"), cache=False)
    assert not result.findings
    assert result.configurations == 1


def test_the_record_says_what_the_sheet_says(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    Path("strip.csv").write_text(PUMP, encoding="utf-8")
    run("new", "device", "alder-5", "--from", "strip.csv")
    device = read_content(Path("content"))[0].devices["alder-5"]
    assert [part.id for part in device.parts] == [
        "frame", "guard", "belt", "pump-head", "impeller", "motor", "control-board",
    ]  # fmt: skip
    motor = device.part("motor")
    assert [one.text for one in motor.behind] == ["guard", "belt"]
    assert device.part("impeller").host is not None
    assert device.part("impeller").host.text == "pump-head"  # type: ignore[union-attr]
    assert len(device.groups["guard-screws"].holes) == 4
    assert device.groups["guard-screws"].sequence == "cross"
    assert next(hole for hole in device.holes if hole.group == "impeller-screw").captive
    assert {one.id: one.joint for one in device.joints} == {
        "guard-seal": "seal",
        "pump-head-seal": "seal",
    }


@pytest.mark.parametrize("name", ["semicolons", "mark", "lines"])
def test_other_ways_to_save_a_sheet(name: str) -> None:
    text = {
        "semicolons": PUMP.replace(",", ";"),
        "mark": "\ufeff" + PUMP,
        "lines": PUMP.replace("\n", "\r\n"),
    }[name]
    assert read_strip(text) == read_strip(PUMP)


@pytest.mark.parametrize(
    ("text", "line", "column", "words"),
    [
        ("", 1, "", "empty"),
        ("part\nCover\n", 1, "held by", "missing"),
        ("part,held by,colour\n", 1, "colour", "no column"),
        ("part,held by\nCover,rivets\n", 2, "held by", "not known"),
        ("part,held by,count\nCover,clip,two\n", 2, "count", "no count"),
        ("part,held by,screw\nCover,screw,wood\n", 2, "screw", "no screw"),
        ("part,held by\n,clip\n", 2, "part", "names no part"),
        ("part,held by\nA,clip\nB,clip\nA,clip\n", 4, "part", "came off before"),
    ],
)
def test_a_slip_is_told_with_its_line_and_column(
    text: str, line: int, column: str, words: str
) -> None:
    _, slips = read_strip(text)
    assert [(one.line, one.column) for one in slips] == [(line, column)]
    assert words in slips[0].words


def test_what_is_no_text_is_told(tmp_path: Path) -> None:
    (tmp_path / "s.csv").write_bytes(b"part,held by\nB\xfcgel,clip\n")
    with pytest.raises(Trouble, match="not UTF-8"):
        strip(tmp_path / "s.csv")
    with pytest.raises(Trouble, match="Can't read"):
        strip(tmp_path / "none.csv")


def test_the_printed_sheet_has_the_columns_of_the_file() -> None:
    page = sheet("Alder 5 <pump>")
    assert all(f">{column}<small>" in page for column in COLUMNS)
    assert page.count("<tr>") == ROWS + 1
    assert "Alder 5 &lt;pump&gt;" in page
    assert blank().strip().split(",") == list(COLUMNS)
    assert "http" not in page


def test_every_word_for_a_hold_makes_a_record_that_is_read(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    lines = [f"Part {n},{word},M3x8 pan TX10" for n, word in enumerate(HELD_BY)]
    Path("s.csv").write_text("part,held by,screw\n" + "\n".join(lines) + "\n", encoding="utf-8")
    assert run("new", "device", "all", "--from", "s.csv") == 0


@pytest.mark.parametrize(
    "words",
    [
        ["new", "device", "Big Pump"],
        ["new", "kit", "k"],
        ["new", "guide", "larch-p2"],
        ["new", "device", "x", "--from", "none.csv"],
    ],
)
def test_wrong_use_is_told(
    words: list[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "content/guides").mkdir(parents=True)
    (tmp_path / "content/devices").mkdir()
    assert run(*words) == 2


def test_nothing_is_written_over(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    assert run("new", "device", "x", "--parts", "Cover, Board") == 0
    before = Path("content/devices/x/device.yaml").read_text(encoding="utf-8")
    assert run("new", "device", "x", "--parts", "Lid") == 2
    assert Path("content/devices/x/device.yaml").read_text(encoding="utf-8") == before
    assert run("new", "device", "x", "--parts", "Lid", "--force") == 0


def test_a_folder_of_something_else_is_left_alone(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "content").mkdir()
    (tmp_path / "content/letter.txt").write_text("mine", encoding="utf-8")
    assert run("new", "device", "x", "--parts", "Lid") == 2
    assert [one.name for one in (tmp_path / "content").iterdir()] == ["letter.txt"]
