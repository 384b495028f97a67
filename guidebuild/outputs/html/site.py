"""The site of a content folder: START.html, a sheet a guide and language, and what all of them share."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from guidebuild.draw.view import Drawn
from guidebuild.guide.content import Content
from guidebuild.guide.settings import Settings
from guidebuild.outputs.html.assets import assets
from guidebuild.outputs.html.belonging import belonging
from guidebuild.outputs.html.edition import Edition, tongues
from guidebuild.outputs.html.links import links
from guidebuild.outputs.html.page.guide import GuideView, guide_view
from guidebuild.outputs.html.page.reading import Reading, reading
from guidebuild.outputs.html.page.start import GuideEntry, entry, start_view
from guidebuild.outputs.html.page.tray import tray_view
from guidebuild.outputs.html.paths import RULES, guide_page, root_of, start_page, tray_page
from guidebuild.outputs.html.pictured import Pictured, pictured
from guidebuild.outputs.html.render import page
from guidebuild.outputs.html.views import Load, SeenAs, seen_as, views_of
from guidebuild.outputs.made import Elsewhere, Listed, Made, nowhere
from guidebuild.proof.proof import Proof

Files = Iterator[tuple[str, bytes]]


def make_site(
    content: Content, proofs: Sequence[Proof], load: Load, translations: Sequence[Edition] = ()
) -> Mapping[str, bytes]:
    """Site path -> bytes. `load` gives a file of the content folder (a drawing) by its path there, or None.

    `translations` are the other languages, proved as `proofs` are. Pure but for the theme's own files, which
    ship with guidebuild.
    """
    made = make_pages(content, proofs, load, translations)
    return {**made.files, **make_lists(content.settings, made.listed)}


def make_pages(
    content: Content,
    proofs: Sequence[Proof],
    load: Load,
    translations: Sequence[Edition] = (),
    elsewhere: Elsewhere = nowhere,
) -> Made:
    """All but what lists every guide; `elsewhere` knows the guides of the site that are not among the proofs."""
    theme = content.settings.theme
    files: dict[str, bytes] = dict(assets(theme))
    drawn = views_of(proofs, load)
    own = Edition(content.settings.languages[0], content, tuple(proofs))
    editions = (own, *translations)
    shown = pictured(proofs, load, editions)
    files |= dict(shown.files())
    listed = {}
    for edition in editions:
        entries: list[GuideEntry] = []
        files |= dict(_edition(theme, edition, editions, drawn, shown, elsewhere, entries))
        listed[edition.language] = tuple(entries)
    guides = {one.language: [proof.guide.path for proof in one.proofs] for one in editions}
    return Made(files, listed, guides, belonging(editions, shown))


def make_lists(settings: Settings, listed: Listed) -> Mapping[str, bytes]:
    """The start page of each language, the authors' own first."""
    return dict(_start(settings, language, listed) for language in listed)


def _edition(
    theme: str,
    edition: Edition,
    editions: Sequence[Edition],
    drawn: Mapping[SeenAs, Mapping[str, Drawn]],
    pictures: Pictured,
    elsewhere: Elsewhere,
    entries: list[GuideEntry],
) -> Files:
    """All pages of one language; what its start page says of each is added to `entries`."""
    language, content = edition.language, edition.content
    there = elsewhere(language, edition.paths)
    for proof in edition.proofs:
        link = links(proof.guide, there)
        said = reading(proof, language, content.tools, content.settings, edition.stale, link)
        path = proof.guide.path
        root = root_of(guide_page(path, language))
        said = replace(
            said, photos=pictures.photos, films=pictures.films, looks=pictures.looks, root=root
        )
        view = guide_view(said, drawn[seen_as(proof.device)])
        entries.append(entry(guide_page(path, language), proof.device.id, view))
        shown = [one.language for one in editions if path in one.paths]
        yield from _guide(theme, language, path, view, shown, editions[0].language)
        if view.screws:
            yield _tray(theme, said, view, editions[0].language)


def _start(settings: Settings, language: str, listed: Listed) -> tuple[str, bytes]:
    first = next(iter(listed))
    here = start_page(language, first)
    values = {
        "start": start_view(settings, listed[language]),
        "root": root_of(here),
        "rules": RULES,
        "tongues": tongues(tuple(listed), language, lambda tag: start_page(tag, first)),
    }
    return here, page(settings.theme, language, "start.html", **values)


def _guide(
    theme: str, language: str, path: str, view: GuideView, shown: Sequence[str], first: str
) -> Files:
    """The sheet of a guide."""
    shared = _shared(path, language, view, first)
    tongues_to = tongues(shown, language, lambda tag: guide_page(path, tag))
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
