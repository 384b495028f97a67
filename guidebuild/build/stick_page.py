"""The page that says what is on a stick, and how to check it without us."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

from guidebuild.build.site_files import SiteFiles
from guidebuild.outputs.html.paths import guide_page
from guidebuild.outputs.html.render import page


@dataclass(frozen=True, slots=True)
class Page:
    """A guide's page in one language, and the same as one file."""

    language: str
    page: str
    single: str


@dataclass(frozen=True, slots=True)
class Row:
    """A guide on the stick."""

    number: str
    title: str
    issue: str
    pages: tuple[Page, ...]


@dataclass(frozen=True, slots=True)
class StickView:
    """What the template shows."""

    publisher: str
    number: str
    date: str
    files: int
    single: bool
    rows: tuple[Row, ...]


def stick_page(
    site: SiteFiles, files: Mapping[str, bytes], number: str, day: date, with_single: bool
) -> bytes:
    """The page's bytes, in the authors' own language; it counts itself and the list of checksums."""
    content = site.result.content
    assert content is not None
    publisher = content.settings.publisher.text if content.settings.publisher else ""
    rows = []
    for one in content.guides:
        if one.guide.path in site.paths:
            guide = one.guide
            number_, issue = (said.text if said else "" for said in (guide.number, guide.issue))
            rows.append(Row(number_, guide.title.text, issue, _pages(guide.path, site, files)))
    view = StickView(publisher, number, day.isoformat(), len(files) + 2, with_single, tuple(rows))
    return page(content.settings.theme, site.languages[0], "stick.html", stick=view, root="")


def _pages(path: str, site: SiteFiles, files: Mapping[str, bytes]) -> tuple[Page, ...]:
    pages = ((language, guide_page(path, language)) for language in site.languages)
    return tuple(
        Page(language, name, f"single/{name.replace('/', '-')}")
        for language, name in pages
        if name in files
    )
