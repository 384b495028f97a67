"""What an earlier report told is not told again, wherever it has moved to."""

import json
from dataclasses import replace
from pathlib import Path

import pytest

from guidebuild.build.since import new, since
from guidebuild.build.trouble import Trouble
from guidebuild.reports import json as report_json
from guidebuild.reports.parts.look import Look
from guidebuild.reports.parts.report import Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Loudness
from guidebuild.source.text import Source
from tests.build.guides import found

BEFORE = Source("guides/a.md", "undo: pins\nundo: plugs\n")
MOVED = Source("guides/a.md", "A new first line.\n\nundo: pins\nundo: plugs\nundo: plugs\n")


def slip(source: Source, text: str, step: str = "open", rule: str = "look-alike-screws") -> Slip:
    return Slip(found(source, text, rule), Loudness.ERROR, (source.path,), "", step, "Open it")


def written(folder: Path, *slips: Slip) -> Path:
    file = folder / "earlier.json"
    file.write_text(report_json.render(Report("0.1.0", slips), Look()), encoding="utf-8")
    return file


def test_what_only_moved_to_another_line_is_not_new(tmp_path: Path) -> None:
    earlier = since(written(tmp_path, slip(BEFORE, "pins"), slip(BEFORE, "plugs")))
    assert new([slip(MOVED, "pins"), slip(MOVED, "plugs")], earlier) == ()


@pytest.mark.parametrize(
    "other",
    [
        slip(MOVED, "pins", step="close"),
        slip(MOVED, "pins", rule="fastener-left-loose"),
        slip(MOVED, "undo: pins"),
        replace(slip(MOVED, "pins"), guides=("guides/b.md",)),
    ],
    ids=["step", "rule", "text", "guide"],
)
def test_another_step_rule_text_or_guide_is_new(tmp_path: Path, other: Slip) -> None:
    assert new([other], since(written(tmp_path, slip(BEFORE, "pins")))) == (other,)


def test_one_more_of_the_same_is_new(tmp_path: Path) -> None:
    earlier = since(written(tmp_path, slip(BEFORE, "plugs")))
    twice = [slip(MOVED, "plugs"), slip(MOVED, "plugs")]
    assert new(twice, earlier) == (twice[1],)


def test_a_shared_stage_s_finding_is_new_when_one_more_guide_has_it(tmp_path: Path) -> None:
    earlier = since(written(tmp_path, slip(BEFORE, "pins")))
    both = replace(slip(BEFORE, "pins"), guides=("guides/a.md", "guides/b.md"))
    assert new([both], earlier) == (both,)


@pytest.mark.parametrize(
    "text",
    ["", "{}", "[]", '{"findings": [{"rule": 1}]}', "not JSON", "null", "[" * 100_000],
    ids=["empty", "no keys", "a list", "no finding", "not JSON", "null", "brackets without end"],
)
def test_what_is_no_report_is_told(tmp_path: Path, text: str) -> None:
    file = tmp_path / "earlier.json"
    file.write_text(text)
    with pytest.raises(Trouble, match="is no report of"):
        since(file)


def test_a_report_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(Trouble, match="Can't read"):
        since(tmp_path / "none.json")


def test_a_long_span_is_known_again_by_its_start(tmp_path: Path) -> None:
    long = Source("guides/a.md", "x" * 1000)
    one = slip(long, "x" * 1000)
    file = written(tmp_path, one)
    assert len(json.loads(file.read_text())["findings"][0]["text"]) == 301
    assert new([one], since(file)) == ()
