"""Every reader of something that comes from outside, as a function of one input: it may refuse, never raise."""

import tempfile
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from io import BytesIO
from pathlib import Path
from typing import Any

from hypothesis import strategies as st

from guidebuild.build.since import since
from guidebuild.build.trouble import Trouble
from guidebuild.device.designation import parse_screw
from guidebuild.draw.clean import clean_svg
from guidebuild.draw.facts import picture_facts
from guidebuild.draw.film import film_seconds
from guidebuild.handover.manifest import read_manifest
from guidebuild.handover.stick_list import read_list
from guidebuild.read.condition import Unreadable, parse
from guidebuild.read.content import read_content
from guidebuild.read.report import Report
from guidebuild.read.yaml.read import read_value
from guidebuild.source.address import may_lead
from guidebuild.source.portable import bad_names
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.po.reader import read_po
from guidebuild.translate.po.writer import write_po
from guidebuild.translate.webvtt.cue_text import plain_text
from guidebuild.translate.webvtt.reader import read_webvtt
from guidebuild.translate.xliff.entries import read_entries
from tests.fuzz import inputs

_ROOM = tempfile.TemporaryDirectory(prefix="guidebuild-fuzz-")


@dataclass(frozen=True)
class Reader:
    """`read` must return for whatever `given` gives. `share`: of a hundred inputs, how many are its own."""

    name: str
    read: Callable[[Any], object]
    given: st.SearchStrategy[Any]
    share: int = 8


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


def readers() -> tuple[Reader, ...]:
    """All of them."""
    import base64

    png = base64.b64decode(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="
    )
    pictures = inputs.bits(inputs.WEBM) | inputs.bits(inputs.MP4) | inputs.bits(png)
    utf8 = inputs.texts(inputs.GUIDE).map(lambda text: text.encode("utf-8", "surrogatepass"))
    return (
        Reader("po", _po, inputs.texts(inputs.PO), 14),
        Reader("xliff", read_entries, inputs.texts(inputs.XLIFF), 14),
        Reader("webvtt", _vtt, inputs.texts(inputs.VTT), 14),
        Reader("svg", clean_svg, inputs.texts(inputs.SVG), 14),
        Reader("yaml", _yaml, inputs.texts(inputs.RECORD), 4),
        Reader("condition", _condition, inputs.texts("M3x8 pan PH1 = b and not (c in (d, e))"), 10),
        Reader("markdown", _folder, utf8 | inputs.bits(inputs.GUIDE.encode()), 2),
        Reader("manifest", read_manifest, inputs.bits(inputs.SUMS.encode())),
        Reader("sticks", read_list, inputs.texts(inputs.CSV)),
        Reader("report", _since, inputs.bits(inputs.REPORT.encode()), 2),
        Reader("pictures", _binary, pictures),
        Reader(
            "names", lambda text: (may_lead(text), bad_names({text: 1})), inputs.texts("a/B.md")
        ),
    )
