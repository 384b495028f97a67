"""The site of a content folder: START.html, a sheet a guide, and what all of them share."""

from collections.abc import Iterator, Mapping, Sequence

from guidebuild.guide.content import Content
from guidebuild.guide.settings import Settings
from guidebuild.outputs.html.assets import assets
from guidebuild.outputs.html.page.guide import GuideView, guide_view
from guidebuild.outputs.html.page.reading import reading
from guidebuild.outputs.html.page.start import GuideEntry, start_view
from guidebuild.outputs.html.paths import START, guide_page, root_of, tray_page
from guidebuild.outputs.html.render import page
from guidebuild.outputs.html.views import Load, views
from guidebuild.proof.proof import Proof

Files = Iterator[tuple[str, bytes]]


def make_site(
    content: Content, proofs: Sequence[Proof], settings: Settings, load: Load
) -> Mapping[str, bytes]:
    """Site path -> bytes. `load` gives a file of the content folder (a drawing) by its path there, or None.

    Pure but for the theme's own files, which ship with guidebuild.
    """
    language, theme = settings.languages[0], settings.theme
    files: dict[str, bytes] = dict(assets(theme))
    entries = []
    drawings: dict[str, dict[str, object]] = {}
    for proof in proofs:
        device = proof.device
        drawn = views(device, load)
        drawings.setdefault(device.id, dict(drawn))
        view = guide_view(reading(proof, language, content.tools, settings), drawn)
        files |= dict(_guide(theme, language, proof.guide.path, view))
        entries.append(GuideEntry(guide_page(proof.guide.path, language), device.id, view))
    start = start_view(settings, entries)
    files[START] = page(theme, language, "start.html", start=start, root="")
    return files


def _guide(theme: str, language: str, path: str, view: GuideView) -> Files:
    """The sheet of a guide, and its tray sheet."""
    sheet, tray = guide_page(path, language), tray_page(path, language)
    links = (("guide", sheet.rpartition("/")[2]), ("tray", tray.rpartition("/")[2]))
    shared = {"guide": view, "root": root_of(sheet), "links": links}
    yield sheet, page(theme, language, "guide.html", **shared)
    if view.screws:
        yield tray, page(theme, language, "tray.html", **shared)
