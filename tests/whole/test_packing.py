"""As the person who hands a stick over, and as the one who gets it: packed, copied, checked, by us and by others."""

import os
import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from tests import needs

CONTENT = Path(__file__).resolve().parents[2] / "content"
DAY = {**os.environ, "SOURCE_DATE_EPOCH": "1767225600"}


def guidebuild(*words: str | Path, cwd: Path) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "guidebuild", *map(str, words)]
    done = subprocess.run(command, capture_output=True, text=True, cwd=cwd, env=DAY)
    assert "Traceback" not in done.stderr
    return done


@pytest.fixture(scope="module")
def stick(tmp_path_factory: pytest.TempPathFactory) -> Path:
    place = tmp_path_factory.mktemp("packed") / "stick"
    done = guidebuild("pack", CONTENT, "--to", place, "--number", "TS-01", cwd=place.parent)
    assert done.returncode == 0, done.stdout + done.stderr
    return place


def test_a_stick_begins_with_its_start_page_and_says_what_is_on_it(stick: Path) -> None:
    assert {"START.html", "SHA256SUMS", "this-stick.html"} <= {one.name for one in stick.iterdir()}
    page = (stick / "this-stick.html").read_text(encoding="utf-8")
    for word in ("TS-01", "LP2-03", "Replace the print head", "2026-01-01"):
        assert word in page
    assert guidebuild("verify", stick, cwd=stick.parent).returncode == 0


def test_a_second_packing_writes_nothing(stick: Path) -> None:
    again = guidebuild("pack", CONTENT, "--to", stick, "--number", "TS-01", cwd=stick.parent)
    assert "holds, 0 bytes newly written" in again.stderr


def test_a_guide_as_one_file_needs_nothing_beside_it(stick: Path) -> None:
    for path in (stick / "single").iterdir():
        page = path.read_text(encoding="utf-8")
        assert "<link rel=" not in page
        assert '<script src="' not in page
        assert "'sha256-" in page
        assert 'href="../' not in page


def test_a_dry_run_writes_nothing(tmp_path: Path) -> None:
    done = guidebuild("pack", CONTENT, "--to", tmp_path / "stick", "--dry-run", cwd=tmp_path)
    assert done.returncode == 0
    assert "would hold" in done.stderr
    assert not (tmp_path / "stick").exists()


def test_only_the_guides_that_were_asked_for(tmp_path: Path) -> None:
    guidebuild("pack", CONTENT, "--to", tmp_path / "stick", "--guides", "LP2-01", cwd=tmp_path)
    guides = [path.name for path in (tmp_path / "stick" / "single").iterdir()]
    assert guides
    assert all("replace-the-battery" in name for name in guides)


def test_a_zip_is_the_same_bytes_from_another_folder(tmp_path: Path) -> None:
    other = shutil.copytree(CONTENT, tmp_path / "elsewhere" / "content")
    for content, name in ((CONTENT, "one.zip"), (other, "two.zip")):
        guidebuild("pack", content, "--to", tmp_path / name, cwd=tmp_path)
    assert (tmp_path / "one.zip").read_bytes() == (tmp_path / "two.zip").read_bytes()
    zipfile.ZipFile(tmp_path / "one.zip").extractall(tmp_path / "out")
    assert guidebuild("verify", tmp_path / "out", cwd=tmp_path).returncode == 0


def test_what_is_damaged_is_named(stick: Path, tmp_path: Path) -> None:
    hurt = shutil.copytree(stick, tmp_path / "hurt")
    (hurt / "START.html").write_text("short")
    (hurt / "extra.txt").write_text("")
    done = guidebuild("verify", hurt, cwd=tmp_path)
    assert done.returncode == 1
    assert "START.html: changed" in done.stdout
    assert "extra.txt: added" in done.stdout


@needs.program("mkfs.vfat")
@needs.program("mcopy")
def test_through_a_fat32_image_and_back(stick: Path, tmp_path: Path) -> None:
    """Source: mkfs.vfat of dosfstools and mcopy of mtools, whose exit code is not trusted: the sums are."""
    image = tmp_path / "stick.img"
    with image.open("wb") as file:
        file.truncate(64 * 2**20)
    quiet = {"capture_output": True, "check": True}
    subprocess.run(["mkfs.vfat", "-F", "32", "-n", "GUIDES", image], **quiet)  # type: ignore[call-overload]
    inside = sorted(str(one) for one in stick.iterdir())
    subprocess.run(["mcopy", "-s", "-i", image, *inside, "::/"], **quiet)  # type: ignore[call-overload]
    back = tmp_path / "back"
    back.mkdir()
    subprocess.run(["mcopy", "-s", "-n", "-i", image, "::/*", back], **quiet)  # type: ignore[call-overload]
    assert guidebuild("verify", back, cwd=tmp_path).returncode == 0
    sums = subprocess.run(
        ["sha256sum", "-c", "--quiet", "SHA256SUMS"], cwd=back, capture_output=True
    )
    assert sums.returncode == 0


def test_a_place_that_is_no_stick_is_said_so(tmp_path: Path) -> None:
    assert guidebuild("verify", tmp_path / "nothing", cwd=tmp_path).returncode == 2
    done = guidebuild("verify", tmp_path, cwd=tmp_path)
    assert done.returncode == 1
    assert "SHA256SUMS: missing" in done.stdout


def test_a_stick_with_an_old_caution_is_called_back(tmp_path: Path) -> None:
    content = shutil.copytree(CONTENT, tmp_path / "content")
    for number, holder in (("TS-01", "bench 2"), ("TS-02", "field 7")):
        words = ("--to", tmp_path / number, "--number", number, "--holder", holder, "--no-single")
        assert guidebuild("pack", content, *words, cwd=tmp_path).returncode == 0
    assert guidebuild("recall", content, cwd=tmp_path).stdout == "0 of 2 sticks are out of date.\n"
    record = content / "devices/larch-p2/device.yaml"
    text = record.read_text(encoding="utf-8")
    record.write_text(
        text.replace("Use only plastic tools near the cell.", "Use no tool near the cell.")
    )
    words = ("--to", tmp_path / "TS-02", "--number", "TS-02", "--holder", "field 7", "--no-single")
    guidebuild("pack", content, *words, cwd=tmp_path)
    done = guidebuild("recall", content, cwd=tmp_path)
    assert done.returncode == 1
    assert "Stick TS-01, with bench 2" in done.stdout
    assert "Cautions changed: " in done.stdout
    assert "TS-02" not in done.stdout
    assert done.stdout.endswith("1 of 2 sticks are out of date.\n")
