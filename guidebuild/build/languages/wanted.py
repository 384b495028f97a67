"""The languages in which a content folder is checked."""

import re
from collections.abc import Iterator
from pathlib import Path

from guidebuild.build.catalogues import FOLDER
from guidebuild.guide.content import Content
from guidebuild.source.span import Span
from guidebuild.translate.pseudo import is_pseudo

SETTINGS = "guidebuild.yaml"


def spoken(content: Content) -> Iterator[str]:
    """Languages of the settings in which anything is translated: the rest is told once, not guide by guide."""
    return (one for one in _named(content) if _has_any(content, one))


def silent(content: Content) -> Iterator[tuple[str, Span]]:
    """Languages of the settings that have no catalogue at all, with where they are named."""
    source = content.sources.get(SETTINGS)
    for language in _named(content):
        if source is not None and not _has_any(content, language):
            found = re.search(
                rf"^languages:[^#]*?\b({re.escape(language)})\b", source.text, re.MULTILINE
            )
            start, end = found.span(1) if found else (0, 0)
            yield language, Span(source, start, end)


def _named(content: Content) -> list[str]:
    return [one for one in content.settings.languages[1:] if not is_pseudo(one)]


def _has_any(content: Content, language: str) -> bool:
    return any((Path(content.root) / FOLDER / language).rglob("*.po"))
