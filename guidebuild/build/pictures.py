"""The facts of the pictures that guides show, read for the rules that ask for them."""

import re
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

from guidebuild.build.captions import captioned
from guidebuild.draw.facts import picture_facts
from guidebuild.draw.film import film_seconds
from guidebuild.guide.content import Content, PictureFacts
from guidebuild.guide.inside import pictures_in
from guidebuild.translate.webvtt.writer import write_webvtt

_ID = re.compile(r"""\bid=["']([a-z0-9.-]+)["']""")
_FILMS = (".webm", ".mp4", ".m4v", ".mov")
_OF_PIXELS = (".jpg", ".jpeg", ".png", ".webp")


def with_pictures(root: Path, content: Content) -> Content:
    """The content with the facts of its pictures and films, and with captions; a bad file has none."""
    shown = {picture.path for one in content.guides for picture in pictures_in(one.guide)}
    facts: dict[str, PictureFacts] = {}
    for path in sorted(shown & content.files):
        if path.lower().endswith(_OF_PIXELS):
            with (root / path).open("rb") as file:
                found = picture_facts(file)
            if found is not None:
                facts[path] = found
    return replace(
        content,
        pictures=facts,
        drawn=_drawn(root, content),
        films=_films(root, content),
        captions={one.film: write_webvtt(one.captions) for one in captioned(content)},
    )


def _films(root: Path, content: Content) -> dict[str, Decimal]:
    """The length of every film in a guide's folder."""
    found: dict[str, Decimal] = {}
    for path in sorted(content.files):
        if path.startswith("guides/") and path.lower().endswith(_FILMS):
            with (root / path).open("rb") as file:
                seconds = film_seconds(file)
            if seconds is not None:
                found[path] = seconds
    return found


def _drawn(root: Path, content: Content) -> dict[str, frozenset[str]]:
    """The ids in every view's file: what the view can show."""
    found: dict[str, frozenset[str]] = {}
    for one in content.guides:
        for view in one.device.views.values():
            path = f"{one.device.folder}/{view.file.text}" if view.file else ""
            if path in content.files and path not in found:
                text = (root / path).read_text(encoding="utf-8", errors="replace")
                found[path] = frozenset(_ID.findall(text))
    return found
