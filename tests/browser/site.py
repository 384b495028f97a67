"""The demo site as a reader has it: built into a folder with a space and letters that are not ASCII."""

import shutil
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

from guidebuild.build.make import make
from guidebuild.outputs.html.paths import START, guide_page, tray_page

CONTENT = Path(__file__).resolve().parents[2] / "content"
LANGUAGE = "en"
FOLDER = "Stick, Prüfung 検査"
THEMES = ("sheet", "plain")


def _guides() -> list[str]:
    """Content paths of the demo's guides, without the stages that several share."""
    found = sorted((CONTENT / "guides").rglob("*.md"))
    return [f"{path.relative_to(CONTENT)}" for path in found if path.parent.name != "shared"]


GUIDES = tuple(guide_page(path, LANGUAGE) for path in _guides())
TRAYS = tuple(tray_page(path, LANGUAGE) for path in _guides())
PAGES = (START, *GUIDES, *TRAYS)
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


def built(theme: str, room: Path) -> Site:
    """The demo in a theme."""
    content = shutil.copytree(CONTENT, room / "content")
    settings = content / "guidebuild.yaml"
    said = settings.read_text(encoding="utf-8")
    assert said.count("theme: sheet") == 1
    settings.write_text(said.replace("theme: sheet", f"theme: {theme}"), encoding="utf-8")
    folder = room / FOLDER
    made = make(content, folder)
    assert not made.site.faults, made.site.faults
    return Site(folder)
