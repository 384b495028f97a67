"""The site of a content folder: START.html, a sheet a guide and language, and what all of them share."""

from collections.abc import Iterator, Mapping, Sequence

from guidebuild.draw.view import Drawn
from guidebuild.guide.content import Content
from guidebuild.outputs.html.assets import assets
from guidebuild.outputs.html.edition import Edition, Tongue, tongues
from guidebuild.outputs.html.page.guide import GuideView, guide_view
from guidebuild.outputs.html.page.reading import reading
from guidebuild.outputs.html.page.start import GuideEntry, start_view
from guidebuild.outputs.html.paths import guide_page, root_of, start_page, tray_page
from guidebuild.outputs.html.render import page
from guidebuild.outputs.html.views import Load, views
from guidebuild.proof.proof import Proof

Files = Iterator[tuple[str, bytes]]


def make_site(
    content: Content, proofs: Sequence[Proof], load: Load, translations: Sequence[Edition] = ()
) -> Mapping[str, bytes]:
    """Site path -> bytes. `load` gives a file of the content folder (a drawing) by its path there, or None.

    `translations` are the other languages, proved as `proofs` are. Pure but for the theme's own files, which
    ship with guidebuild.
    """
    theme = content.settings.theme
    files: dict[str, bytes] = dict(assets(theme))
    drawn = {proof.device.id: views(proof.device, load) for proof in proofs}
    own = Edition(content.settings.languages[0], content, tuple(proofs))
    editions = (own, *translations)
    for edition in editions:
        files |= dict(_edition(theme, edition, editions, drawn))
    return files


def _edition(
    theme: str,
    edition: Edition,
    editions: Sequence[Edition],
    drawn: Mapping[str, Mapping[str, Drawn]],
) -> Files:
    """All pages of one language."""
    language, content = edition.language, edition.content
    entries = []
    for proof in edition.proofs:
        said = reading(proof, language, content.tools, content.settings, edition.stale)
        view = guide_view(said, drawn.get(proof.device.id, {}))
        path = proof.guide.path
        entries.append(GuideEntry(guide_page(path, language), proof.device.id, view))
        shown = [one for one in editions if path in one.paths]
        yield from _guide(theme, language, path, view, shown)
    start = start_view(content.settings, entries)
    first = editions[0].language
    here = start_page(language, first)
    values = {
        "start": start,
        "root": root_of(here),
        "tongues": tongues(editions, language, lambda tag: start_page(tag, first)),
    }
    yield here, page(theme, language, "start.html", **values)


def _guide(
    theme: str, language: str, path: str, view: GuideView, editions: Sequence[Edition]
) -> Files:
    """The sheet of a guide, and its tray sheet."""
    sheet, tray = guide_page(path, language), tray_page(path, language)
    links = (("guide", sheet.rpartition("/")[2]), ("tray", tray.rpartition("/")[2]))
    first = editions[0].language
    shared = {
        "guide": view,
        "root": root_of(sheet),
        "links": links,
        "start": start_page(language, first),
    }
    yield (
        sheet,
        page(theme, language, "guide.html", **shared, tongues=_to(editions, language, path)),
    )
    if view.screws:
        yield tray, page(theme, language, "tray.html", **shared, tongues=())


def _to(editions: Sequence[Edition], language: str, path: str) -> tuple[Tongue, ...]:
    return tongues(editions, language, lambda tag: guide_page(path, tag))
