"""Mending: edits go together or not at all, are tried on a copy, and never make anything worse."""

import os
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from guidebuild.build.edits import applied, plan
from guidebuild.build.fix import fix, put
from guidebuild.build.result import CheckResult
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Category, Finding, Loudness
from guidebuild.source.span import Span
from guidebuild.source.text import Source

GUIDE = "guides/a.md"


def slip(source: Source, start: int, end: int, text: str, rule: str = "unknown-id") -> Slip:
    span = Span(source, start, end)
    edit = Edit(span, text)
    finding = Finding(rule, Category.CORRECTNESS, span, "is wrong", "mend it", edits=(edit,))
    return Slip(finding, Loudness.ERROR, (source.path,))


def misspelt(
    right: dict[str, str], extra: Callable[[str], list[str]] = lambda text: []
) -> Callable[[Path], CheckResult]:
    """A checker that finds each wrong word of `right`, and a finding without an edit for each of `extra`."""

    def check(root: Path) -> CheckResult:
        source = Source(GUIDE, (root / GUIDE).read_bytes().decode("utf-8-sig"))
        slips = [
            slip(source, at, at + len(word), mended)
            for word, mended in right.items()
            if (at := source.text.find(word)) >= 0
        ]
        for rule in extra(source.text):
            finding = Finding(rule, Category.CORRECTNESS, Span(source, 0, 1), "is wrong", "")
            slips.append(Slip(finding, Loudness.ERROR, (GUIDE,)))
        return CheckResult(tuple(slips), (), (GUIDE,), 1)

    return check


@pytest.fixture
def content(tmp_path: Path) -> Path:
    (tmp_path / "guides").mkdir()
    (tmp_path / GUIDE).write_bytes(b"\xef\xbb\xbfremove: scrws\r\nundo: clps\r\n")
    (tmp_path / GUIDE).chmod(0o640)
    return tmp_path


def test_all_that_has_one_answer_is_mended(content: Path) -> None:
    fixed = fix(content, misspelt({"scrws": "screws", "clps": "clips"}))
    assert fixed.mended == 2
    put(content, fixed)
    assert (content / GUIDE).read_bytes() == b"\xef\xbb\xbfremove: screws\r\nundo: clips\r\n"
    assert (content / GUIDE).stat().st_mode & 0o777 == 0o640


def test_nothing_is_written_until_it_is_put(content: Path) -> None:
    before = (content / GUIDE).read_bytes()
    fix(content, misspelt({"scrws": "screws"}))
    assert (content / GUIDE).read_bytes() == before
    assert os.stat(content / GUIDE).st_nlink == 1


def test_a_second_time_changes_nothing(content: Path) -> None:
    check = misspelt({"scrws": "screws", "clps": "clips"})
    put(content, fix(content, check))
    again = fix(content, check)
    assert (again.mended, again.after) == (0, {})


def test_what_comes_to_light_by_mending_is_mended_too(content: Path) -> None:
    fixed = fix(content, misspelt({"scrws": "skrews", "skrews": "screws"}))
    assert "remove: screws" in fixed.after[GUIDE]


def test_a_mending_that_makes_something_worse_is_left_out_and_the_others_are_not(
    content: Path,
) -> None:
    def extra(text: str) -> list[str]:
        return ["out-of-reach"] if "clips" in text else []

    fixed = fix(content, misspelt({"scrws": "screws", "clps": "clips"}, extra))
    assert fixed.mended == 1
    assert "undo: clps" in fixed.after[GUIDE]
    assert "remove: screws" in fixed.after[GUIDE]


def test_mending_that_turns_in_a_circle_comes_to_an_end(content: Path) -> None:
    fixed = fix(content, misspelt({"scrws": "clps", "clps": "scrws"}))
    assert fixed.mended


def test_two_edits_at_one_place_are_not_taken_together() -> None:
    source = Source(GUIDE, "abcdef")
    taken = plan([slip(source, 0, 2, "x"), slip(source, 2, 3, "y"), slip(source, 4, 5, "z")])
    assert [each.finding.span.start for each in taken.slips] == [0, 4]
    assert taken.mended() == {GUIDE: "xcdzf"}


@given(
    st.text(max_size=30),
    st.lists(st.tuples(st.integers(0, 30), st.integers(0, 3), st.text(max_size=3))),
)
def test_what_no_edit_touches_stays_as_it_is(text: str, wanted: list[tuple[int, int, str]]) -> None:
    source = Source(GUIDE, text)
    slips = [
        slip(source, min(start, len(text)), min(start + size, len(text)), new)
        for start, size, new in wanted
    ]
    edits = plan(slips).edits.get(GUIDE, [])
    expected, at = "", 0
    for edit in sorted(edits, key=lambda each: each.span.start):
        expected += text[at : edit.span.start] + edit.text
        at = edit.span.end
    assert applied(text, edits) == expected + text[at:]
