"""The demo site as a reader has it: built into a folder with a space and letters that are not ASCII."""

import re
import shutil
from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

from guidebuild.build.make import make
from guidebuild.build.pack import Wish, pack
from guidebuild.build.take_out import take_out
from guidebuild.outputs.html.paths import RULES, START, guide_page, tray_page
from guidebuild.read.content import read_content

CONTENT = Path(__file__).resolve().parents[2] / "content"
LANGUAGE = "en"
TRANSLATED = ("de", "ar")
PSEUDO = (
    "en-XA",
    "ar-XB",
)  # nobody speaks them: longer words with marks on them; from right to left
LABELLED = (
    "ja",
    "fr",
    "es",
    "sv",
)  # only the tool's own words, round English ones; of the last not even these
FOLDER = "Stick, Prüfung 検査"
THEMES = ("sheet", "plain")


def _guides() -> list[str]:
    """Content paths of the demo's guides, without the stages that several share."""
    found = sorted((CONTENT / "guides").rglob("*.md"))
    return [f"{path.relative_to(CONTENT)}" for path in found if path.parent.name != "shared"]


GUIDES = tuple(guide_page(path, LANGUAGE) for path in _guides())
TRAYS = tuple(tray_page(path, LANGUAGE) for path in _guides())
PAGES = (START, RULES, *GUIDES, *TRAYS)
KINDS = (START, GUIDES[-1], TRAYS[-1])  # one page of each kind


@dataclass(frozen=True)
class Site:
    """A built site; `folder` is where START.html stands."""

    folder: Path

    def url(self, page: str) -> str:
        """The address of a page, as the file manager hands it to the browser."""
        return (self.folder / page).as_uri()

    @cached_property
    def html(self) -> tuple[Path, ...]:
        """Every page of the site."""
        return tuple(sorted(self.folder.rglob("*.html")))


def _copied(room: Path, change: Callable[[str], str]) -> Path:
    content = Path(shutil.copytree(CONTENT, room / "content"))
    settings = content / "guidebuild.yaml"
    said = settings.read_text(encoding="utf-8")
    told = change(said)
    settings.write_text(told, encoding="utf-8")
    return content


def _made(content: Path, folder: Path) -> Site:
    made = make(content, folder)
    assert not made.site.faults, made.site.faults
    return Site(folder)


def built(theme: str, room: Path) -> Site:
    """The demo in a theme."""
    content = _copied(room, lambda said: said.replace("theme: sheet", f"theme: {theme}"))
    assert f"theme: {theme}\n" in (content / "guidebuild.yaml").read_text(encoding="utf-8")
    return _made(content, room / FOLDER)


def worldwide(room: Path) -> Site:
    """The demo in `TRANSLATED`, `PSEUDO` and `LABELLED`."""
    tags = ", ".join((LANGUAGE, *TRANSLATED, *PSEUDO, *LABELLED))
    content = _copied(
        room, lambda said: re.sub(r"(?m)^languages: \[.*?\]", f"languages: [{tags}]", said)
    )
    read, _ = read_content(content)
    for language in LABELLED:
        take_out(content, read, language, "po", None)
    return _made(content, room / FOLDER)


def packed(room: Path) -> Site:
    """The demo as a stick."""
    folder = room / FOLDER
    assert not pack(CONTENT, Wish(folder, number="EYES-1")).bad
    return Site(folder)
