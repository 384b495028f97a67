"""`guidebuild check --fix` on a whole project."""

from pathlib import Path

import pytest

from tests.whole.project import PROJECTS, change, copy, guidebuild

GUIDE = "content/guides/brill-7/change-lamp.md"


@pytest.fixture
def misspelt(tmp_path: Path) -> Path:
    project = copy("lamp", tmp_path)
    change(project / GUIDE, "undo: shade-screws", "undo: shade-scrws")
    change(project / GUIDE, "exchange: lamp", "exchange: lmp")
    return project


def test_what_has_one_answer_is_mended_and_the_guide_is_as_it_was(misspelt: Path) -> None:
    said = guidebuild("check", "--fix", cwd=misspelt)
    assert said.code == 0
    assert said.out == "All is well. Proved: 1 guide, 2 configurations.\n"
    assert said.err == "Mended: 2 findings in 1 file.\n"
    assert (misspelt / GUIDE).read_bytes() == (PROJECTS / "lamp" / GUIDE).read_bytes()


def test_a_dry_run_shows_the_difference_and_writes_nothing(misspelt: Path) -> None:
    before = (misspelt / GUIDE).read_bytes()
    said = guidebuild("check", "--fix", "--dry-run", cwd=misspelt)
    assert "-undo: shade-scrws\n+undo: shade-screws\n" in said.out
    assert said.out.startswith(f"--- {GUIDE}\n+++ {GUIDE}\n")
    assert (misspelt / GUIDE).read_bytes() == before


def test_nothing_to_mend_writes_nothing(tmp_path: Path) -> None:
    project = copy("lamp", tmp_path)
    before = (project / GUIDE).stat()
    assert guidebuild("check", "--fix", cwd=project).code == 0
    after = (project / GUIDE).stat()
    assert (after.st_mtime_ns, after.st_ino, after.st_nlink) == (
        before.st_mtime_ns,
        before.st_ino,
        1,
    )
