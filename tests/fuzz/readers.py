"""Every reader of something that comes from outside, as a function of one input: it may refuse, never raise."""

import shutil
import tempfile
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from functools import cache
from io import BytesIO
from pathlib import Path
from typing import Any

from hypothesis import strategies as st
from PIL import ExifTags, Image, ImageCms

from guidebuild.build.bring_back import bring_back
from guidebuild.build.parts.packing import packed, unpacked
from guidebuild.build.since import since
from guidebuild.build.trouble import Trouble
from guidebuild.device.designation import parse_screw
from guidebuild.device.record import Device
from guidebuild.draw.clean import clean_svg
from guidebuild.draw.facts import picture_facts
from guidebuild.draw.film import film_seconds
from guidebuild.draw.photo import photo
from guidebuild.draw.view import read_view
from guidebuild.draw.view_symbols import view_symbols
from guidebuild.handover.manifest import read_manifest
from guidebuild.handover.stick_list import read_list
from guidebuild.plan.start.strip import read_strip
from guidebuild.read.condition import Unreadable, parse
from guidebuild.read.content import read_content
from guidebuild.read.report import Report
from guidebuild.read.yaml.read import read_value
from guidebuild.source.address import may_lead
from guidebuild.source.portable import bad_names
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.captions.srt import read_srt
from guidebuild.translate.po.reader import read_po
from guidebuild.translate.po.writer import write_po
from guidebuild.translate.webvtt.cue_text import plain_text
from guidebuild.translate.webvtt.reader import read_webvtt
from guidebuild.translate.xliff.entries import read_entries
from tests.fuzz import inputs
from tests.fuzz.folders import laid, places

_ROOM = tempfile.TemporaryDirectory(prefix="guidebuild-fuzz-")


@dataclass(frozen=True)
class Reader:
    """`read` must return for whatever `given` gives. `share`: of a hundred inputs, how many are its own.

    `seeds`: sound inputs, all text or all bytes, as `read` takes them.
    """

    name: str
    read: Callable[[Any], object]
    given: st.SearchStrategy[Any]
    share: int
    seeds: tuple[str | bytes, ...]


def _text(name: str, read: Callable[[str], object], seed: str, share: int = 8) -> Reader:
    return Reader(name, read, inputs.texts(seed), share, (seed,))


def _raw(name: str, read: Callable[[bytes], object], *seeds: bytes, share: int = 8) -> Reader:
    given = st.sampled_from(seeds).flatmap(inputs.bits)
    return Reader(name, read, given, share, seeds)


def _file(name: str, read: Callable[[bytes], object], seed: str, share: int = 1) -> Reader:
    """Damaged as text and as bytes."""
    given = inputs.texts(seed).map(encoded)
    data = seed.encode()
    return Reader(name, read, given | given | inputs.bits(data), share, (data,))


def _po(text: str) -> None:
    catalogue, faults = read_po(text)
    if not faults:
        again, more = read_po(write_po(catalogue))
        assert not more
        assert again == catalogue


def _vtt(text: str) -> None:
    captions = read_webvtt(text)
    for cue in captions.cues if captions else ():
        plain_text(cue.text)


def _yaml(text: str) -> None:
    source = Source("devices/d/device.yaml", text)
    read_value(source, 0, len(text), "device", "the record", Report())


def _condition(text: str) -> None:
    source = Source("a.md", text)
    span = Span(source, 0, len(text))
    parse_screw(text, span)
    try:
        parse(text, span, 0)
    except Unreadable as refused:
        assert 0 <= refused.start <= refused.end <= len(text)


def _folder(data: bytes) -> None:
    root = Path(_ROOM.name)
    (root / "guides").mkdir(exist_ok=True)
    (root / "guides/a.md").write_bytes(data)
    read_content(root)


def _since(data: bytes) -> None:
    file = Path(_ROOM.name) / "report.json"
    file.write_bytes(data)
    with suppress(Trouble):
        since(file)


def _binary(data: bytes) -> None:
    picture_facts(BytesIO(data))
    film_seconds(BytesIO(data))
    photo(data)


def _drawing(text: str) -> None:
    """An author's drawing, cleaned, and as a view of a device."""
    clean_svg(text)
    found = device()
    for view in found.views.values():
        view_symbols(read_view(found, view, text))


@cache
def device() -> Device:
    """The one of the samples."""
    return next(iter(read_content(laid())[0].devices.values()))


def _srt(text: str) -> None:
    captions, faults = read_srt(text)
    for cue in captions.cues if not faults else ():
        plain_text(cue.text)


def _part(data: bytes) -> None:
    """What came from another machine is told as damaged, whatever is raised: so only time and memory count here."""
    with suppress(Exception):
        unpacked(data)


def _returned(data: bytes, ending: str) -> None:
    """A translator's file on its whole way into the catalogue."""
    root = laid()
    file = Path(_ROOM.name) / f"back{ending}"
    file.write_bytes(data)
    try:
        with suppress(Trouble):
            bring_back(root, read_content(root)[0], file)
    finally:
        shutil.rmtree(root / "translations", ignore_errors=True)


def readers() -> tuple[Reader, ...]:
    """All of them."""
    return (
        _text("po", _po, inputs.PO, 14),
        _text("xliff", read_entries, inputs.XLIFF, 14),
        _text("webvtt", _vtt, inputs.VTT, 14),
        _text("srt", _srt, inputs.SRT, 14),
        _text("svg", _drawing, inputs.SVG, 14),
        _text("yaml", _yaml, inputs.RECORD, 4),
        _text("condition", _condition, "M3x8 pan PH1 = b and not (c in (d, e))", 10),
        _raw("manifest", read_manifest, inputs.SUMS.encode()),
        _text("sticks", read_list, inputs.CSV),
        _text("strip", read_strip, inputs.STRIP),
        _text("names", lambda text: (may_lead(text), bad_names({text: 1})), "a/B.md"),
        _raw("report", _since, inputs.REPORT.encode(), share=2),
        _raw("pictures", _binary, inputs.WEBM, inputs.MP4, photograph("PNG")),
        _raw("photos", photo, *map(photograph, FORMS), share=2),
        _raw("parts", _part, packed([Span(Source("a", "b"), 0, 1)])),
        _file("markdown", _folder, inputs.GUIDE, 2),
        _file("po-back", lambda data: _returned(data, ".po"), inputs.PO),
        _file("xliff-back", lambda data: _returned(data, ".xlf"), inputs.XLIFF),
        *(_file(name, read, seed) for name, seed, read in places()),
    )


FORMS = ("PNG", "JPEG", "WEBP", "GIF", "TIFF", "BMP")


def photograph(form: str) -> bytes:
    """A small picture, a little different in every corner, with EXIF and a profile where it can have them."""
    picture = Image.effect_noise((40, 30), 60).convert("RGB")
    exif = Image.Exif()
    exif[ExifTags.Base.Orientation] = 6
    out = BytesIO()
    picture.save(
        out,
        form,
        exif=exif,
        icc_profile=ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes(),
    )
    return out.getvalue()


def encoded(text: str) -> bytes:
    """As a file may hold it, sound or not."""
    return text.encode("utf-8", "surrogatepass")
