"""Damage of every kind is told by name, by us and by GNU sha256sum; `python -m tests.handover.flips` does thousands."""

import shutil
from pathlib import Path

import pytest

from guidebuild.handover.bag import bagged
from guidebuild.handover.manifest import LARGEST, NAME
from guidebuild.handover.verify import Difference, Trouble, verify
from guidebuild.handover.write import write_tree
from tests import needs
from tests.handover.flips import HURTS, hurt, hurt_in_a_bag

_FILES = {
    "START.html": b"<!DOCTYPE html>",
    "en/a/one.html": b"one" * 500,
    "en/a/two.html": b"two",
    "photos/x-480.jpg": bytes(range(256)),
}


@pytest.mark.skipif(shutil.which("sha256sum") is None, reason="needs sha256sum")
@pytest.mark.parametrize("way", [*(way.__name__ for way in HURTS), "add"])
def test_it_is_told_and_told_alone(tmp_path: Path, way: str) -> None:
    write_tree(tmp_path / "stick", _FILES)
    assert hurt(tmp_path / "stick", {way: 15}) == {way: 15}


def test_a_library_of_bags_agrees(tmp_path: Path) -> None:
    needs.library("bagit")
    write_tree(tmp_path / "bag", bagged(_FILES, {"Bagging-Date": "2026-01-01"}))
    assert hurt_in_a_bag(tmp_path / "bag", 12) == 12


def test_a_list_of_checksums_without_end_is_not_read(tmp_path: Path) -> None:
    write_tree(tmp_path / "stick", _FILES)
    with (tmp_path / "stick" / NAME).open("r+b") as file:
        file.truncate(LARGEST + 1)
    found = verify(tmp_path / "stick")[1]
    assert Difference(NAME, Trouble.MANIFEST.value, 1) in found
    assert {one.path for one in found} == {NAME, *_FILES}
