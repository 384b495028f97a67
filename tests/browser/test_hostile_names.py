"""Names of files that an author may send: they become safe paths or nothing, and words where they are shown."""

import json
import shutil
from pathlib import Path
from urllib.parse import quote

import pytest

from guidebuild.build.make import make
from tests.browser.chrome import Browser
from tests.browser.hostile.looking import seen, watching

CONTENT = Path(__file__).resolve().parents[2] / "content"
GUIDE, PICTURE = "replace-the-print-head", "plug-plate.jpg"
FILM = f"{GUIDE}/free-the-head-flex"
NAMES = (
    '"onerror=alert(1) x="',
    "'><svg onload=alert(1)>",
    "<img src=x onerror=alert(1)>",
    "javascript:alert(1)",
    "&quot;onload=alert(1)",
    "%22onerror=alert(1)",
    "{{alert(1)}}",
    "${alert(1)}",
    "\u202egpj.alert(1)",
    "a\nb alert(1)",
    "#alert(1)",
    "?alert(1)",
    "x.html alert(1)",
    "..alert(1)",
    "data:text;html,alert(1)",
)
NO_PAGE = ("javascript:alert(1)", "..alert(1)", "data:text;html,alert(1)")  # refused, and told
_SAFE = set("abcdefghijklmnopqrstuvwxyz0123456789._-/") | set("START")


def named(to: Path, name: str) -> Path:
    """The demo's printer with a guide, a picture, a film and its captions of this name."""
    shutil.copytree(
        CONTENT, to, ignore=shutil.ignore_patterns("brindle*", "alder*", "translations")
    )
    settings = to / "guidebuild.yaml"
    settings.write_text(settings.read_text("utf-8").replace("[en, de, ar]", "[en]"), "utf-8")
    guides, device = to / "guides/larch-p2", to / "devices/larch-p2"
    (device / PICTURE).rename(device / f"{name}.jpg")
    record = (device / "device.yaml").read_text("utf-8")
    (device / "device.yaml").write_text(record.replace(PICTURE, json.dumps(f"{name}.jpg")), "utf-8")
    for file in sorted((guides / GUIDE).iterdir()):
        file.rename(file.with_name(file.name.replace("free-the-head-flex", name)))
    (guides / GUIDE).rename(guides / name)
    said = (guides / f"{GUIDE}.md").read_text("utf-8").replace(PICTURE, quote(f"{name}.jpg"))
    said = said.replace("free-the-head-flex.mp4", json.dumps(f"{name}.mp4"))
    (guides / f"{name}.md").write_text(said, "utf-8")
    (guides / f"{GUIDE}.md").unlink()
    return to


@pytest.mark.parametrize("name", NAMES)
def test_a_name_is_a_path_or_words(browser: Browser, tmp_path: Path, name: str) -> None:
    made = make(named(tmp_path / "content", name), tmp_path / "site")
    assert not made.site.result.faults + made.site.faults, "a fault of ours"
    paths = [
        path.relative_to(tmp_path / "site").as_posix() for path in made_files(tmp_path / "site")
    ]
    assert all(set(path) <= _SAFE for path in paths), paths
    if name not in NO_PAGE:
        for folder in ("films", "photos"):
            assert any(path.startswith(folder) and "alert-1" in path for path in paths), paths
    with watching(browser):
        for page in sorted((tmp_path / "site").rglob("*.html")):
            assert seen(browser, page, tmp_path / "site").troubles == ()


def made_files(site: Path) -> list[Path]:
    """All that stands in a site but the builder's own list."""
    return [path for path in site.rglob("*") if path.is_file() and path.suffix != ".txt"]
