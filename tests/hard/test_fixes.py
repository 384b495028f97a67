"""What a finding offers as an edit mends it: read again, it is not said any more."""

import shutil
from pathlib import Path

import pytest

from guidebuild.read.content import read_content
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Finding
from tests.hard.broken import PLAIN, Broken, broken

MENDABLE = [one for one in broken() if any(finding.edits for finding in one.findings())]


def mended(edits: tuple[Edit, ...]) -> str:
    """The file's text with the edits made, last one first."""
    text = edits[0].span.source.text
    for edit in sorted(edits, key=lambda one: one.span.start, reverse=True):
        text = text[: edit.span.start] + edit.text + text[edit.span.end :]
    return text


def said(findings: list[Finding]) -> list[tuple[str, str]]:
    return [(one.rule, one.message) for one in findings]


@pytest.mark.parametrize("one", MENDABLE, ids=lambda one: f"{one.path.parent.name}/{one.path.stem}")
def test_an_edit_mends_what_it_is_for(one: Broken, tmp_path: Path) -> None:
    before = one.findings()
    root = tmp_path / "content"
    shutil.copytree(PLAIN, root)
    if one.path.parent.name == "record":
        shutil.rmtree(root / "guides")
        shutil.rmtree(root / "kits")
    for finding in before:
        if finding.edits:
            (root / one.place).write_text(mended(finding.edits), encoding="utf-8")
            after = said(read_content(root)[1])
            what = (finding.rule, finding.message)
            assert after.count(what) < said(before).count(what)


def test_many_findings_can_be_mended() -> None:
    assert len(MENDABLE) > 40
