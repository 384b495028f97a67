"""A site is put in place whole, and what others left in its folder stays there."""

import os
from pathlib import Path

import pytest

from guidebuild.build import swap
from guidebuild.build.listing import NAME, ours
from guidebuild.build.swap import put
from guidebuild.build.trouble import Trouble

SITE = {"START.html": b"<p>start", "guides/brill-7/lamp.html": b"<p>lamp"}


def tree(folder: Path) -> dict[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file() and path.name != NAME
    }


def test_a_new_site_holds_its_files_and_their_list(tmp_path: Path) -> None:
    put(SITE, tmp_path / "site")
    assert tree(tmp_path / "site") == SITE
    assert ours(tmp_path / "site") == {*SITE, NAME}


def test_the_next_build_takes_away_what_is_no_longer_made(tmp_path: Path) -> None:
    put(SITE, tmp_path / "site")
    put({"START.html": b"<p>new"}, tmp_path / "site")
    assert tree(tmp_path / "site") == {"START.html": b"<p>new"}
    assert not (tmp_path / "site" / "guides").exists()


def test_files_of_others_stay(tmp_path: Path) -> None:
    site = tmp_path / "site"
    (site / "guides" / "brill-7").mkdir(parents=True)
    (site / "README.md").write_text("Kept.")
    (site / "guides" / "brill-7" / "note.txt").write_text("Mine.")
    (site / "empty").mkdir()
    (site / "link").symlink_to("README.md")
    kept = put(SITE, site)
    assert set(kept) == {"README.md", "guides/brill-7/note.txt", "empty", "link"}
    assert (site / "README.md").read_text() == "Kept."
    assert (site / "guides" / "brill-7" / "note.txt").read_text() == "Mine."
    assert (site / "empty").is_dir()
    assert os.readlink(site / "link") == "README.md"


def test_a_file_of_others_is_never_replaced(tmp_path: Path) -> None:
    (tmp_path / "site").mkdir()
    (tmp_path / "site" / "START.html").write_text("somebody's own")
    with pytest.raises(Trouble, match=r"START\.html was not written by guidebuild"):
        put(SITE, tmp_path / "site")
    assert tree(tmp_path / "site") == {"START.html": b"somebody's own"}
    assert list(tmp_path.iterdir()) == [tmp_path / "site"]


def test_a_file_in_the_place_of_the_site_is_left_alone(tmp_path: Path) -> None:
    (tmp_path / "site").write_text("a file")
    with pytest.raises(Trouble, match="is a file"):
        put(SITE, tmp_path / "site")
    assert (tmp_path / "site").read_text() == "a file"


@pytest.mark.parametrize("stop", ["_write", "_bring", "_swap"])
@pytest.mark.parametrize("how", [KeyboardInterrupt, OSError(28, "No space left on device")])
def test_a_build_that_is_stopped_leaves_the_old_site(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, stop: str, how: BaseException
) -> None:
    put(SITE, tmp_path / "site")

    def stopped(*_: object) -> None:
        raise how

    monkeypatch.setattr(swap, stop, stopped)
    with pytest.raises((KeyboardInterrupt, Trouble)):
        put({"START.html": b"<p>new"}, tmp_path / "site")
    assert tree(tmp_path / "site") == SITE
    assert list(tmp_path.iterdir()) == [tmp_path / "site"]


def test_a_build_stopped_between_the_two_renames_brings_the_old_site_back(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    put(SITE, tmp_path / "site")
    rename = Path.rename

    def stop_at_the_second(path: Path, target: Path) -> Path:
        if path.name.endswith(swap.NEW):
            raise KeyboardInterrupt
        return rename(path, target)

    monkeypatch.setattr(Path, "rename", stop_at_the_second)
    with pytest.raises(KeyboardInterrupt):
        put({"START.html": b"<p>new"}, tmp_path / "site")
    assert tree(tmp_path / "site") == SITE


def test_after_a_power_cut_the_next_build_finds_the_old_site(tmp_path: Path) -> None:
    put({**SITE, "README.md": b"listed as ours here"}, tmp_path / "site")
    (tmp_path / "site" / "note.txt").write_text("Mine.")
    (tmp_path / "site").rename(tmp_path / f"site{swap.OLD}")
    (tmp_path / f"site{swap.NEW}").mkdir()
    put(SITE, tmp_path / "site")
    assert tree(tmp_path / "site") == {**SITE, "note.txt": b"Mine."}
    assert list(tmp_path.iterdir()) == [tmp_path / "site"]


def test_a_link_to_the_site_stays_a_link(tmp_path: Path) -> None:
    (tmp_path / "real").mkdir()
    (tmp_path / "site").symlink_to("real")
    put(SITE, tmp_path / "site")
    assert (tmp_path / "site").is_symlink()
    assert tree(tmp_path / "real") == SITE


def test_a_damaged_list_makes_nothing_ours(tmp_path: Path) -> None:
    site = tmp_path / "site"
    site.mkdir()
    (site / NAME).write_bytes(b"\xff\xfe../../etc/passwd\n")
    assert ours(site) == frozenset()
    (site / NAME).write_text("../outside\n/absolute\nSTART.html\n")
    assert ours(site) == {"START.html"}
