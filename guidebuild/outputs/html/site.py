"""The site of a content folder: START.html, a sheet a guide and language, and what all of them share."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from guidebuild.draw.photo import Photo
from guidebuild.draw.view import Drawn
from guidebuild.guide.content import Content
from guidebuild.outputs.html.assets import assets
from guidebuild.outputs.html.edition import Edition, Tongue, tongues
from guidebuild.outputs.html.links import links
from guidebuild.outputs.html.page.guide import GuideView, guide_view
from guidebuild.outputs.html.page.reading import Reading, reading
from guidebuild.outputs.html.page.start import GuideEntry, start_view
from guidebuild.outputs.html.page.tray import tray_view
from guidebuild.outputs.html.paths import guide_page, root_of, start_page, tray_page
from guidebuild.outputs.html.photos import photo_files, photographs
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
    photos = photographs(proofs, load)
    files |= dict(photo_files(photos))
    own = Edition(content.settings.languages[0], content, tuple(proofs))
    editions = (own, *translations)
    for edition in editions:
        files |= dict(_edition(theme, edition, editions, drawn, photos))
    return files


def _edition(
    theme: str,
    edition: Edition,
    editions: Sequence[Edition],
    drawn: Mapping[str, Mapping[str, Drawn]],
    photos: Mapping[str, Photo],
) -> Files:
    """All pages of one language."""
    language, content = edition.language, edition.content
    entries = []
    for proof in edition.proofs:
        link = links(proof.guide, edition.paths)
        said = reading(proof, language, content.tools, content.settings, edition.stale, link)
        path = proof.guide.path
        said = replace(said, photos=photos, root=root_of(guide_page(path, language)))
        view = guide_view(said, drawn.get(proof.device.id, {}))
        entries.append(GuideEntry(guide_page(path, language), proof.device.id, view))
        shown = [one for one in editions if path in one.paths]
        yield from _guide(theme, language, path, view, shown)
        if view.screws:
            yield _tray(theme, said, view, editions[0].language)
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
    """The sheet of a guide."""
    shared = _shared(path, language, view, editions[0].language)
    tongues_to = _to(editions, language, path)
    yield (
        guide_page(path, language),
        page(theme, language, "guide.html", **shared, tongues=tongues_to),
    )


def _tray(theme: str, reading: Reading, view: GuideView, first: str) -> tuple[str, bytes]:
    """The tray sheet of a guide that takes screws out."""
    path, language = reading.guide.path, reading.say.language
    shared = _shared(path, language, view, first)
    tray = tray_view(reading, view.screws, _name(guide_page(path, language)))
    data = page(theme, language, "tray.html", **shared, tray=tray, tongues=())
    return tray_page(path, language), data


def _shared(path: str, language: str, view: GuideView, first: str) -> dict[str, object]:
    """What both pages of a guide need."""
    sheet, tray = guide_page(path, language), tray_page(path, language)
    links = [("guide", _name(sheet)), *([("tray", _name(tray))] if view.screws else [])]
    return {
        "guide": view,
        "root": root_of(sheet),
        "links": links,
        "start": start_page(language, first),
    }


def _name(page: str) -> str:
    return page.rpartition("/")[2]


def _to(editions: Sequence[Edition], language: str, path: str) -> tuple[Tongue, ...]:
    return tongues(editions, language, lambda tag: guide_page(path, tag))
