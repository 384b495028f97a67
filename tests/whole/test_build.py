"""`guidebuild build` on a whole project: where the site goes, and what it leaves alone."""

import os
import sys
from pathlib import Path

import pytest

from guidebuild.build.listing import NAME
from tests.whole.project import change, copy, guidebuild

GUIDE = "content/guides/brill-7/change-lamp.md"


@pytest.fixture
def lamp(tmp_path: Path) -> Path:
    return copy("lamp", tmp_path)


def files(folder: Path) -> dict[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in folder.rglob("*")
        if path.is_file()
    }


def test_the_site_stands_and_says_where_to_begin(lamp: Path) -> None:
    said = guidebuild("build", cwd=lamp)
    assert said.code == 0
    assert said.out == "All is well. Proved: 1 guide, 2 configurations.\n"
    assert said.err.endswith("Open site/START.html.\n")
    assert (lamp / "site" / "START.html").is_file()


def test_the_same_content_gives_the_same_site(lamp: Path) -> None:
    for seed in "12":
        guidebuild("build", "--out", f"site-{seed}", cwd=lamp, PYTHONHASHSEED=seed)
    assert files(lamp / "site-1") == files(lamp / "site-2")


def test_a_readme_that_was_there_stays(lamp: Path) -> None:
    (lamp / "site").mkdir()
    (lamp / "site" / "README.md").write_text("Kept.")
    guidebuild("build", cwd=lamp)
    guidebuild("build", cwd=lamp)
    assert (lamp / "site" / "README.md").read_text() == "Kept."


def test_findings_are_told_and_the_draft_is_built(lamp: Path) -> None:
    change(lamp / GUIDE, "refit: shade\ndo-up: shade-screws", "refit: shade")
    said = guidebuild("build", cwd=lamp)
    assert said.code == 1
    assert "fastener-not-returned" in said.out
    assert (lamp / "site" / "START.html").is_file()


def test_a_folder_full_of_somebody_s_files_is_not_touched(lamp: Path) -> None:
    (lamp / "home").mkdir()
    (lamp / "home" / "START.html").write_text("mine")
    said = guidebuild("build", "--out", "home", cwd=lamp)
    assert said.code == 2
    assert "was not written by guidebuild" in said.err
    assert files(lamp / "home") == {"START.html": b"mine"}


@pytest.mark.parametrize("out", ["content", "content/site", "."])
def test_a_site_in_the_content_or_around_it_is_refused(lamp: Path, out: str) -> None:
    said = guidebuild("build", "--out", out, cwd=lamp)
    assert said.code == 2
    assert "can't be in the content folder" in said.err
    assert (lamp / GUIDE).is_file()


def test_a_part_of_the_content_is_not_a_site(lamp: Path) -> None:
    said = guidebuild("build", "content/guides", cwd=lamp)
    assert said.code == 2
    assert "name the whole of it" in said.err


def test_where_nothing_can_be_written_it_is_told(lamp: Path) -> None:
    (lamp / "file").write_text("in the way")
    said = guidebuild("build", "--out", "file/site", cwd=lamp)
    assert said.code == 2
    assert "Can't write" in said.err


@pytest.mark.skipif(sys.platform == "win32", reason="folders are locked in another way there")
def test_a_read_only_content_folder_is_enough(lamp: Path) -> None:
    for folder, _, names in os.walk(lamp / "content"):
        for name in names:
            os.chmod(Path(folder) / name, 0o444)
        os.chmod(folder, 0o555)
    assert guidebuild("build", cwd=lamp).code == 0


def test_spaces_and_other_scripts_in_every_path(lamp: Path) -> None:
    odd = lamp.rename(lamp.parent / "Werk statt ÄÖ 作業台 %20 #1")
    said = guidebuild("build", "--out", "Ausgabe für Stick 1", cwd=odd)
    assert said.code == 0
    assert (odd / "Ausgabe für Stick 1" / NAME).is_file()
