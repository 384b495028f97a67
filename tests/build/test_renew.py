"""A site built again after a change is the same, byte for byte, as one that is made at once."""

import os
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from guidebuild.build import renew
from guidebuild.build.make import Made, make
from tests.bench.many_guides import write

GUIDES, STEPS = 4, 6


@pytest.fixture
def content(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("GUIDEBUILD_CACHE", str(tmp_path / "cache"))
    root = tmp_path / "content"
    root.mkdir()
    write(root, GUIDES, STEPS)
    return root


def files(site: Path) -> dict[str, bytes]:
    return {
        one.relative_to(site).as_posix(): one.read_bytes()
        for one in site.rglob("*")
        if one.is_file()
    }


def guide(content: Path, number: int) -> Path:
    return content / "guides" / "rack-0" / f"change-{number}.md"


def told(made: Made) -> list[tuple[str, str]]:
    return [(found.rule, found.message) for found in made.site.result.findings]


def times(site: Path) -> dict[str, int]:
    return {one: (site / one).stat().st_mtime_ns for one in files(site)}


def edited(path: Path, old: str, new: str) -> None:
    text = path.read_text(encoding="utf-8")
    assert old in text
    path.write_text(text.replace(old, new, 1), encoding="utf-8")


def words_of_a_step(content: Path) -> None:
    edited(guide(content, 1), "dry cloth", "clean dry cloth")


def a_title(content: Path) -> None:
    edited(guide(content, 1), "title: Change card 1", "title: Look at card 1")


def a_link_to_another_guide(content: Path) -> None:
    edited(guide(content, 1), "dry cloth", "[dry cloth](change-2.md)")


def a_guide_more(content: Path) -> None:
    shutil.copy(guide(content, 1), content / "guides" / "rack-0" / "again.md")


def a_guide_less(content: Path) -> None:
    guide(content, 3).unlink()


def a_guide_that_can_no_longer_be_read(content: Path) -> None:
    guide(content, 2).write_text("Nothing.\n", encoding="utf-8")


def the_record(content: Path) -> None:
    edited(content / "devices" / "rack-0" / "device.yaml", "name: Rack rack-0", "name: Rack R")


def the_settings(content: Path) -> None:
    (content / "guidebuild.yaml").write_text("publisher: Somebody else\n", encoding="utf-8")


CHANGES = [
    words_of_a_step, a_title, a_link_to_another_guide, a_guide_more, a_guide_less,
    a_guide_that_can_no_longer_be_read, the_record, the_settings,
]  # fmt: skip


@pytest.mark.parametrize("change", CHANGES, ids=lambda one: one.__name__)
def test_after_a_change(content: Path, tmp_path: Path, change: Callable[[Path], None]) -> None:
    make(content, tmp_path / "site")
    change(content)
    made = make(content, tmp_path / "site")
    at_once = make(content, tmp_path / "fresh", cache=False)
    assert files(tmp_path / "site") == files(tmp_path / "fresh")
    assert made.written == at_once.written
    assert told(made) == told(at_once)


def test_only_the_pages_of_what_changed_are_written(content: Path, tmp_path: Path) -> None:
    site = tmp_path / "site"
    make(content, site)
    before = times(site)
    words_of_a_step(content)
    make(content, site)
    changed = {one for one, time in times(site).items() if before[one] != time}
    assert changed - {"guidebuild-files.txt"} == {
        "en/rack-0/change-1.html",
        "en/rack-0/change-1-tray.html",
    }


def test_where_nothing_changed_nothing_is_written(content: Path, tmp_path: Path) -> None:
    site = tmp_path / "site"
    first = make(content, site)
    before = times(site)
    second = make(content, site)
    assert times(site) == before
    assert second.written == first.written
    assert second.site.languages == first.site.languages


def test_a_page_that_was_spoilt_or_lost_is_made_again(content: Path, tmp_path: Path) -> None:
    site = tmp_path / "site"
    make(content, site)
    whole = files(site)
    (site / "en/rack-0/change-1.html").write_text("spoilt", encoding="utf-8")
    (site / "en/rack-0/change-2.html").unlink()
    make(content, site)
    assert files(site) == whole
    (site / "START.html").unlink()
    (site / "sheet" / "sheet.css").write_text("spoilt", encoding="utf-8")
    make(content, site)
    assert files(site) == whole


def test_a_fault_of_ours_leaves_the_old_site(
    content: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    site = tmp_path / "site"
    make(content, site)
    whole = files(site)
    words_of_a_step(content)

    def falls_over(*_: object) -> None:
        raise RuntimeError("ours")

    monkeypatch.setattr(renew, "_made", falls_over)
    made = make(content, site)
    assert made.site.faults and not made.written
    assert files(site) == whole


def test_a_disk_without_links_gets_copies(
    content: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    site = tmp_path / "site"
    make(content, site)

    def no_links(*_: object, **__: object) -> None:
        raise OSError

    monkeypatch.setattr(os, "link", no_links)
    words_of_a_step(content)
    make(content, site)
    make(content, tmp_path / "fresh", cache=False)
    assert files(site) == files(tmp_path / "fresh")
