"""Differences in the trade's terms, with the steps that they touch."""

import subprocess
from pathlib import Path

import pytest

from guidebuild.build.comparing import Compared, compare
from guidebuild.build.trouble import Trouble
from guidebuild.cli.main import main
from guidebuild.plan.compare.telling import page, text
from tests.plan.drafted import copied

HEAD = "guides/larch-p2/replace-the-print-head.md"


def git(root: Path, *words: str) -> None:
    who = ["-c", "user.name=bench", "-c", "user.email=bench@example.org"]
    subprocess.run(["git", *who, *words], cwd=root, check=True, capture_output=True)


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """The demo content in a repository of its own, one folder down."""
    where = copied(tmp_path)
    git(tmp_path, "init", "-q")
    git(tmp_path, "add", ".")
    git(tmp_path, "commit", "-q", "-m", "first")
    return where


def change(root: Path, file: str, old: str, new: str) -> None:
    path = root / file
    said = path.read_text(encoding="utf-8")
    assert old in said
    path.write_text(said.replace(old, new, 1), encoding="utf-8")


def since(root: Path, old: str, new: str) -> Compared:
    change(root, "devices/larch-p2/device.yaml", old, new)
    return compare(root, ["larch-p2"], since="HEAD")


def told(found: Compared) -> list[str]:
    return [one.change.words for one in found.found]


def test_nothing_changed(root: Path) -> None:
    found = compare(root, ["larch-p2"], since="HEAD")
    assert not found.found
    assert "There is no difference." in text(found.one, found.other, found.found)


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        (
            "screw: M2.5x5 pan TX8",
            "screw: M2.5x6 pan TX8",
            "The motor screws are 1 mm longer (M2.5x6 pan TX8).",
        ),
        (
            "screw: M2.5x5 pan TX8",
            "screw: M2.5x5 pan PH1",
            "The motor screws have another drive: PH1 instead of TX8.",
        ),
        (
            "torque: 0.15 N·m",
            "torque: 0.20 N·m",
            "The bracket screws are tightened to 0.20 N·m instead of 0.15 N·m.",
        ),
        (
            "lid: {name: Roll lid, opens-to: 110}",
            "lid: {name: Roll lid, opens-to: 90}",
            "The roll lid opens to 90°.",
        ),
        (
            "motor: {name: Feed motor, behind: cover}",
            "motor: {name: Drive, behind: cover}",
            "The drive is called Drive instead of Feed motor.",
        ),
        (
            "peel-bar: {name: Peel bar, mounted-on: print-head}",
            "peel-bar: {name: Peel bar, behind: cover}",
            "The peel bar sits on the frame instead of the print head.",
        ),
        (
            "    carries: [keys]\n",
            "    carries: [printing]\n",
            "The keypad flex P4 carries Printing instead of Keys and display.",
        ),
        ("keys: Keys and display", "keys: Keys", "The function Keys and display is called Keys."),
        (
            "warning: A lithium cell can",
            "warning: A cell can",
            "A hazard is told otherwise: A cell can catch fire when it is pierced, bent or shorted.",
        ),
        (
            "holes: {left: [9.8, 56], right: [63.3, 56]}",
            "holes: {left: [9.8, 56]}",
            "The bracket screws, hole right, are gone.",
        ),
    ],
)
def test_one_change_is_one_sentence(root: Path, old: str, new: str, words: str) -> None:
    assert words in told(since(root, old, new))


def test_a_cover_that_hides_one_more_plug(root: Path) -> None:
    old = "joins: [motor, main-board]\n    style"
    found = since(root, old, "joins: [motor, main-board]\n    behind: plug-plate\n    style")
    assert "The plug plate hides one more plug: the motor plug P3." in told(found)


def test_the_steps_are_those_that_handle_it(root: Path) -> None:
    found = since(root, "screw: M2.5x12 pan TX8", "screw: M2.5x14 pan TX8")
    (one,) = found.found
    assert [step.title for step in one.steps] == [
        "Remove the lower cover screws",
        "Fit the lower cover screws",
    ]


def test_a_joint_touches_the_step_that_closes_it_by_its_part(root: Path) -> None:
    found = since(
        root,
        "cover-clips: {name: Cover clips, kind: clip",
        "cover-clips: {name: Cover clips, kind: hook",
    )
    steps = [step.title for one in found.found for step in one.steps]
    assert "Close the cover" in steps


def test_two_issues_of_a_guide(root: Path) -> None:
    change(root, HEAD, "issue: 2\n", "issue: 3\n")
    change(
        root,
        HEAD,
        "- reconnect: sensor-plug\n```\n\nPull",
        "- reconnect: sensor-plug\n  with: spudger\n```\n\nPull",
    )
    words = told(compare(root, [HEAD], since="HEAD"))
    assert "The issue: 3; it was: 2." in words
    assert (
        'In the step "Connect the head" this is new: reconnect sensor-plug; with spudger' in words
    )
    assert 'In the step "Connect the head" this is gone: reconnect sensor-plug' in words


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ("max: 30 %", "max: 20 %", "Before the work, charge: 20 % at most; it was: 30 % at most."),
        ("torque: 0.30 N·m", "torque: 0.32 N·m", "torque 0.32 N·m"),
        ("hold: 1 s", "hold: 2 s", "; hold 2 s"),
        ("ends: {charge-lead: open}\n", "", "How things end: nothing; it was: charge-lead "),
        (
            "](plug-plate.jpg)",
            "](head-plugs.jpg)",
            "this is new: the picture head-plugs.jpg: The plug",
        ),
    ],
)
def test_nothing_that_a_guide_says_changes_in_silence(
    root: Path, old: str, new: str, words: str
) -> None:
    change(root, HEAD, old, new)
    found = told(compare(root, [HEAD], since="HEAD"))
    assert any(words in one for one in found), found


def test_two_commits_against_each_other(root: Path) -> None:
    change(root, "devices/larch-p2/device.yaml", "torque: 0.15 N·m", "torque: 0.20 N·m")
    git(root, "commit", "-q", "-a", "-m", "second")
    change(root, "devices/larch-p2/device.yaml", "torque: 0.20 N·m", "torque: 0.25 N·m")
    found = compare(root, ["larch-p2"], since="HEAD~1", until="HEAD")
    assert told(found) == ["The bracket screws are tightened to 0.20 N·m instead of 0.15 N·m."]


def test_a_page_shows_no_markup_of_the_authors(root: Path) -> None:
    found = since(root, "{name: Feed motor,", "{name: <b>Drive</b>,")
    whole = page(found.one, found.other, found.found)
    assert "&lt;b&gt;Drive" in whole
    assert "<b>" not in whole
    assert "http" not in whole


@pytest.mark.parametrize(
    ("names", "commit", "words"),
    [
        (["larch-p2"], "no-such-commit", "does not find"),
        (["larch-p2"], "--output=x", "does not find"),
        (["larch-p3"], "HEAD", "no device larch-p3"),
        (["larch-p2", HEAD], "HEAD", "one of each"),
        (["guides/none.md"], "HEAD", "no guide"),
    ],
)
def test_what_is_not_there_is_told(root: Path, names: list[str], commit: str, words: str) -> None:
    with pytest.raises(Trouble, match=words):
        compare(root, names, since=commit)
    assert not (root / "x").exists()


def test_the_exit_code_tells(root: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", "larch-p2", "--since", "HEAD", "--content", str(root)]) == 0
    assert main(["compare", "larch-p2", "brindle-e4", "--content", str(root)]) == 1
    assert main(["compare", "larch-p2", "--content", str(root)]) == 2
    assert "--since" in capsys.readouterr().err
