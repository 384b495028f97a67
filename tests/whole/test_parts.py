"""A check and a build in parts, each part somewhere else: joined, they are the bytes of one run."""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.whole.test_reproducible import copied, tree

_PLACES = (
    {"TZ": "UTC", "LC_ALL": "C", "PYTHONHASHSEED": "1"},
    {"TZ": "Pacific/Kiritimati", "LC_ALL": "tr_TR.UTF-8", "PYTHONHASHSEED": "2"},
    {"TZ": "America/St_Johns", "LC_ALL": "C.UTF-8", "LANG": "ar", "PYTHONHASHSEED": "4294967295"},
)
_REPORTS = ("json", "sarif", "junit", "code-quality", "plain", "workflow-commands")
_BATTERY, _HEAD = "larch-p2/replace-the-battery.md", "larch-p2/replace-the-print-head.md"


def guidebuild(*words: str | Path, cwd: Path, place: int = 0) -> subprocess.CompletedProcess[str]:
    environment = {**os.environ, "GUIDEBUILD_CACHE": os.devnull, **_PLACES[place % 3]}
    command = [sys.executable, "-m", "guidebuild", *map(str, words)]
    done = subprocess.run(command, capture_output=True, text=True, cwd=cwd, env=environment)
    assert "Traceback" not in done.stderr
    return done


def troubled(to: Path, backwards: bool = False) -> Path:
    """The demo with all that could tell parts from a whole."""
    copied(to, backwards)
    guides = to / "guides"
    battery = guides / _BATTERY
    said = battery.read_text(encoding="utf-8")
    links = "[One](replace-the-print-head.md), [two](../alder-v3/lost.md), [three](../alder-v3/torn.md)."
    battery.write_text(
        said.replace("stay as they are.\n", f"stay as they are. {links}\n"), encoding="utf-8"
    )
    (guides / "alder-v3/torn.md").write_text("---\ntitle: [\n---\n", encoding="utf-8")
    (guides / "alder-v3/lost.md").write_bytes(b"---\ntitle: \xff\n---\n")
    shutil.copy(to / "devices/larch-p2/plug-plate.jpg", guides / "larch-p2/unused.jpg")
    (to / "devices/larch-p2/device.yml").write_text("name: X\n", encoding="utf-8")
    (to / "kits").mkdir(exist_ok=True)
    (to / "kits/nobody.yaml").write_text("nam: X\n", encoding="utf-8")
    return to


def reports(room: Path, name: str) -> list[str]:
    return [f"--report={one}={room / name}.{one}" for one in _REPORTS]


@pytest.fixture(scope="module")
def single(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A room with the content, one site and the reports of one run."""
    room = tmp_path_factory.mktemp("single")
    troubled(room / "content")
    words = ("--jobs", "1", *reports(room, "whole"))
    done = guidebuild("build", "content", "--out", "site", *words, cwd=room)
    assert done.returncode == 1, done.stderr
    return room


def test_the_content_has_what_parts_could_get_wrong(single: Path) -> None:
    found = json.loads((single / "whole.json").read_bytes())["findings"]
    rules = {one["rule"] for one in found}
    assert {"picture-unused", "not-utf-8", "yaml-not-readable", "file-missing"} <= rules
    page = (single / "site/en/larch-p2/replace-the-battery.html").read_text(encoding="utf-8")
    assert 'href="replace-the-print-head.html"' in page
    assert "lost.html" not in page
    assert "torn.html" not in page


@pytest.mark.parametrize("of", [1, 3, 7])
def test_parts_joined_are_the_whole(single: Path, tmp_path: Path, of: int) -> None:
    """Each part in a folder of its own, with other processes, time, language, its files made in another order."""
    parts: list[Path] = []
    for number in range(1, of + 1):
        room = tmp_path / f"Rechner {number} – 検査"
        troubled(room / "content", backwards=number % 2 == 0)
        part = ("--part", f"{number}/{of}", "--out", f"part-{number}", "--jobs", str(number))
        done = guidebuild("build", "content", *part, cwd=room, place=number)
        assert done.returncode == 0, done.stderr
        parts.append(Path(shutil.move(room / f"part-{number}", tmp_path)))
    words: list[str | Path] = [*reversed(parts), *reports(tmp_path, "whole")]
    done = guidebuild("join", "--out", tmp_path / "site", *words, cwd=single, place=of)
    assert done.returncode == 1, done.stderr
    assert tree(tmp_path / "site") == tree(single / "site")
    for one in _REPORTS:
        assert (tmp_path / f"whole.{one}").read_bytes() == (single / f"whole.{one}").read_bytes()


def test_parts_of_a_check_give_the_reports_alone(single: Path, tmp_path: Path) -> None:
    parts = [tmp_path / f"part-{number}" for number in (1, 2, 3)]
    for number, part in enumerate(parts, 1):
        words = ("--part", f"{number}/3", "--out", part, "--report", f"json={part}.json")
        assert guidebuild("check", "content", *words, cwd=single, place=number).returncode == 0
    done = guidebuild("join", *parts, *reports(tmp_path, "whole"), cwd=single)
    assert done.returncode == 1
    for one in _REPORTS:
        assert (tmp_path / f"whole.{one}").read_bytes() == (single / f"whole.{one}").read_bytes()
    some = json.loads((tmp_path / "part-3.json").read_bytes())["findings"]
    every = json.loads((single / "whole.json").read_bytes())["findings"]
    assert 0 < len(some) < len(every)
    assert all(one in every for one in some)
    done = guidebuild("join", *parts, "--out", tmp_path / "site", cwd=single)
    assert done.returncode == 2
    assert "holds no pages" in done.stderr
    assert not (tmp_path / "site").exists()
