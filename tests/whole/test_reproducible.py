"""The same content gives the same bytes: in another folder, time zone, language, order of files and of hashes."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

CONTENT = Path(__file__).resolve().parents[2] / "content"
DAY = "1767225600"
_HERE = {"TZ": "UTC", "LC_ALL": "C", "PYTHONHASHSEED": "1"}
_THERE = (
    {"TZ": "Pacific/Kiritimati", "LC_ALL": "tr_TR.UTF-8", "PYTHONHASHSEED": "2"},
    {"TZ": "America/St_Johns", "LC_ALL": "C.UTF-8", "LANG": "ar", "PYTHONHASHSEED": "4294967295"},
)


def copied(to: Path, backwards: bool) -> Path:
    """The demo, its files made in order or from the last to the first: folders list them as they came."""
    for path in sorted(CONTENT.rglob("*"), reverse=backwards):
        if path.is_file():
            target = to / path.relative_to(CONTENT)
            target.parent.mkdir(parents=True, exist_ok=True)
            target.write_bytes(path.read_bytes())
            os.utime(target, (0, 0) if backwards else None)
    return to


def made(command: list[str], **words: str) -> None:
    environment = {**os.environ, "SOURCE_DATE_EPOCH": DAY, "GUIDEBUILD_CACHE": os.devnull, **words}
    done = subprocess.run(
        [sys.executable, "-m", "guidebuild", *command],
        capture_output=True, text=True, env=environment, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stdout + done.stderr


def tree(root: Path) -> dict[str, bytes]:
    return {f"{p.relative_to(root)}": p.read_bytes() for p in root.rglob("*") if p.is_file()}


@pytest.fixture(scope="module")
def first(tmp_path_factory: pytest.TempPathFactory) -> dict[str, bytes]:
    room = tmp_path_factory.mktemp("here")
    return packed(room, copied(room / "content", False), "1", _HERE)


def packed(room: Path, content: Path, jobs: str, words: dict[str, str]) -> dict[str, bytes]:
    """The form of a pack that has most in it: the site, each guide as one file, sums, and a bag around them."""
    pack = ["pack", str(content), "--to", str(room / "bag"), "--bag", "--number", "TS-01"]
    made([*pack, "--jobs", jobs], **words)
    return tree(room / "bag")


@pytest.mark.parametrize("there", _THERE, ids=lambda words: words["TZ"])
def test_the_same_bytes_elsewhere(
    first: dict[str, bytes], tmp_path: Path, there: dict[str, str]
) -> None:
    room = tmp_path / "Ein anderer Ordner" / "検査"
    again = packed(room, copied(room / "content", True), "3", there)
    assert sorted(first) == sorted(again)
    assert [path for path in first if first[path] != again[path]] == []
