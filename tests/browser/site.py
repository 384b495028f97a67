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
LANGUAGES = (LANGUAGE, *TRANSLATED, *PSEUDO, *LABELLED)
JAPANESE = {  # a few words of a guide, for the search
    "Replace the print head": "プリントヘッドの交換",
    "Remove the upper cover screws": "上カバーのねじを外す",
}
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


def in_language(page: str, language: str) -> str:
    """The same page in another language."""
    inside = page.removeprefix(f"{LANGUAGE}/")
    return page if language == LANGUAGE else f"{language.lower()}/{inside}"


@dataclass(frozen=True)
class Site:
    """A built site; `folder` is where START.html stands."""

    folder: Path

    def url(self, page: str) -> str:
        """The address of a page, as the file manager hands it to the browser."""
        file = self.folder / page
        assert file.is_file(), page
        return file.as_uri()

    @cached_property
    def html(self) -> tuple[Path, ...]:
        """Every page of the site."""
        return tuple(sorted(self.folder.rglob("*.html")))


def _copied(room: Path, change: Callable[[str], str]) -> Path:
    content = Path(shutil.copytree(CONTENT, room / "content"))
    settings = content / "guidebuild.yaml"
    told = change(settings.read_text(encoding="utf-8"))
    settings.write_text(told, encoding="utf-8")
    return content


def _made(content: Path, folder: Path) -> None:
    made = make(content, folder)
    assert made.written and not made.site.faults, made.site.faults


def themed(theme: str, room: Path) -> None:
    """The demo in a theme."""
    _made(
        _copied(room, lambda said: _once(r"theme: sheet", f"theme: {theme}", said)), room / FOLDER
    )


def worldwide(room: Path) -> None:
    """The demo in `LANGUAGES`."""
    tags = ", ".join(LANGUAGES)
    content = _copied(
        room, lambda said: _once(r"(?m)^languages: \[.*?\]", f"languages: [{tags}]", said)
    )
    read, _ = read_content(content)
    for language in LABELLED:
        take_out(content, read, language, "po", None)
    some = content / "translations/ja/guides/larch-p2/replace-the-print-head.po"
    said = some.read_text(encoding="utf-8")
    for words, japanese in JAPANESE.items():
        said = _once(
            f'(?m)^msgid "{words}"\nmsgstr ""', f'msgid "{words}"\nmsgstr "{japanese}"', said
        )
    some.write_text(said, encoding="utf-8")
    _made(content, room / FOLDER)


def packed(room: Path) -> None:
    """The demo as a stick."""
    assert not pack(CONTENT, Wish(room / FOLDER, number="P2-0001")).bad


def _once(pattern: str, words: str, said: str) -> str:
    told, count = re.subn(pattern, words, said, count=1)
    assert count == 1, pattern
    return told
