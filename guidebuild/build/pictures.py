"""The facts of the pictures that guides show, read for the rules that ask for them."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

from guidebuild.build.captions import captioned
from guidebuild.device.record import Device
from guidebuild.draw.facts import picture_facts
from guidebuild.draw.film import film_seconds
from guidebuild.draw.limits import (
    Refused,
    drawing_refused,
    is_drawing,
    picture_refused,
    too_many_bytes,
)
from guidebuild.guide.content import Content, PictureFacts
from guidebuild.guide.inside import pictures_in
from guidebuild.translate.webvtt.writer import write_webvtt

_ID = re.compile(r"""\bid=["']([a-z0-9.-]+)["']""")
_FILMS = (".webm", ".mp4", ".m4v", ".mov")
_OF_PIXELS = (".jpg", ".jpeg", ".png", ".webp")
PICTURES = (*_OF_PIXELS, ".gif", ".svg")


def with_pictures(root: Path, content: Content) -> Content:
    """The content with the facts of its pictures and films, and with captions; a bad file has none."""
    shown = {picture.path for one in content.guides for picture in pictures_in(one.guide)}
    views = {path for one in content.guides for path in _views(one.device)}
    unshown = {
        path: (no.why, no.do)
        for path in sorted((shown | views) & content.files)
        if (no := _refused(root / path, path)) is not None
    }
    facts: dict[str, PictureFacts] = {}
    for path in sorted((shown & content.files) - unshown.keys()):
        if path.lower().endswith(_OF_PIXELS):
            with (root / path).open("rb") as file:
                found = picture_facts(file)
            if found is not None:
                facts[path] = found
    return replace(
        content,
        pictures=facts,
        unshown=unshown,
        drawn=_drawn(root, views & content.files - unshown.keys()),
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


def _views(device: Device) -> Iterator[str]:
    """The content paths of its drawings."""
    return (f"{device.folder}/{one.file.text}" for one in device.views.values() if one.file)


def _refused(file: Path, path: str) -> Refused | None:
    """What stands against a picture or a view on a page."""
    found = too_many_bytes(path, file.stat().st_size)
    if found is not None:
        return found
    if is_drawing(path):
        return drawing_refused(file.read_text(encoding="utf-8", errors="replace"))
    with file.open("rb") as data:
        return picture_refused(data)


def _drawn(root: Path, views: Iterable[str]) -> dict[str, frozenset[str]]:
    """The ids in every view's file: what the view can show."""
    texts = ((path, (root / path).read_text(encoding="utf-8", errors="replace")) for path in views)
    return {path: frozenset(_ID.findall(text)) for path, text in texts}
