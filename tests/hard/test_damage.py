"""Random damage never makes the reader fall over, and no place is ever made up."""

import shutil
import tempfile
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from guidebuild.guide.blocks.act import Act
from guidebuild.guide.step import Fork
from guidebuild.read.content import read_content
from guidebuild.shipped import shipped
from tests.hard.broken import HERE, broken
from tests.hard.spans import as_written, in_order, in_their_files
from tests.language.test_samples import samples

SIGNS = ["`", "```", "\n", "#", "*", "&a", "*a", ": ", "{", "}", "[", "]", '"', "'", "|", ">", "\t", "\0", "\r",
         "---\n", "***\n", "- ", "<!--", "-->", "![x](y)", "[a](b)", "\u2028", "é", "%", "!", "when: ",
         "# [x](shared/x.md)\n", "## ", "### ", "\\", "&amp;", "  \n"]  # fmt: skip
RAW = [b"\xff", b"\xc3", b"\x80"]


@pytest.fixture(scope="module")
def folder() -> object:
    """The samples and a shared stage, laid out once; every case puts its file back."""
    with tempfile.TemporaryDirectory() as name:
        for place, text in FILES.items():
            path = Path(name) / place
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(text)
        yield Path(name)


FILES = {place: text.encode() for place, text in samples().items()}
PROSE = """
The **far _screw_** is `2 mm` longer\\* &amp; lies
  deeper, see [the *drawing*](head.svg).  
Next line <!-- not shown --> ends.

- One item
- Another with `code`
  1. and a list

> Quoted *words*
> go on.
"""
GUIDE = "guides/larch-p2/replace-the-print-head.md"
FILES[GUIDE] += PROSE.encode()


@st.composite
def damaged(draw: st.DrawFn) -> tuple[str, bytes]:
    """A file, and what it reads after a few bytes were lost, doubled or put in."""
    place = draw(st.sampled_from(sorted(FILES)))
    data = bytearray(FILES[place])
    for _ in range(draw(st.integers(1, 4))):
        at = draw(st.integers(0, len(data)))
        match draw(st.sampled_from(["cut", "put", "raw", "double"])):
            case "cut":
                del data[at : at + draw(st.sampled_from([1, 2, 5, 40]))]
            case "put":
                data[at:at] = draw(st.sampled_from(SIGNS)).encode()
            case "raw":
                data[at : at + 1] = draw(st.sampled_from(RAW))
            case _:
                start = draw(st.integers(0, len(data)))
                data[at:at] = data[start : start + 60]
    return place, bytes(data)


@settings(max_examples=300, deadline=None)
@given(damaged())
def test_damage_is_told_and_never_raised(folder: Path, case: tuple[str, bytes]) -> None:
    place, data = case
    try:
        (folder / place).write_bytes(data)
        content, findings = read_content(folder)
    finally:
        (folder / place).write_bytes(FILES[place])
    in_their_files(content)
    for one in content.guides:
        in_order(one.guide)
    for finding in findings:
        for span in (finding.span, *(edit.span for edit in finding.edits)):
            assert 0 <= span.start <= span.end <= len(span.source.text)
    assert findings == sorted(findings, key=lambda one: one.sort_key)


def test_places_in_files_that_are_right(folder: Path) -> None:
    content, findings = read_content(folder)
    assert [one.message for one in findings] == []
    in_their_files(content)
    for one in content.guides:
        in_order(one.guide)
        for step in one.guide.steps:
            for item in step.flow:
                if isinstance(item, Act):
                    assert all(map(as_written, item.targets))
                assert item.span.text if not isinstance(item, Fork) else item.methods


def test_the_same_files_give_the_same_values(folder: Path) -> None:
    first, second = (repr(read_content(folder)) for _ in range(2))
    assert first == second


def test_every_broken_file_damaged_further(tmp_path: Path) -> None:
    """Each line of each broken file left out in turn."""
    shutil.copytree(HERE / "plain", tmp_path / "content")
    root = tmp_path / "content"
    for one in broken():
        kept = (root / one.place).read_bytes() if (root / one.place).exists() else None
        lines = one.text.splitlines(keepends=True)
        for number in range(0, len(lines), 3):
            (root / one.place).write_text(
                "".join(lines[:number] + lines[number + 1 :]), encoding="utf-8"
            )
            in_their_files(read_content(root)[0])
        if kept is None:
            (root / one.place).unlink()
        else:
            (root / one.place).write_bytes(kept)


def test_schemas_lie_where_they_are_looked_for() -> None:
    assert (shipped("schema") / "words.schema.json").exists()
