"""Files that are small and unpack to more than a machine has, or cost more time than a reader may take.

`python -m tests.hard.bombs NAME` reads one with little to spend; ends with 0 where the reader came to an end.
"""

import resource
import struct
import sys
import zlib
from collections.abc import Callable
from io import BytesIO

SECONDS, BYTES = 20, 512 * 2**20  # of processor time, and of memory beyond what the modules take


def png(width: int, height: int, rows: int) -> bytes:
    """A grey PNG whose head says one size, and whose data are `rows` rows of nothing."""

    def chunk(kind: bytes, data: bytes) -> bytes:
        return (
            struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))
        )

    packer = zlib.compressobj(9)
    data = b"".join(packer.compress(bytes(width + 1)) for _ in range(rows)) + packer.flush()
    head = struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", data) + chunk(b"IEND", b"")


def gif(frames: int) -> bytes:
    """A film of so many frames of one pixel each."""
    frame = b"\x2c" + struct.pack("<HHHHB", 0, 0, 1, 1, 0) + b"\x02\x02D\x01\x00"
    return b"GIF89a\x01\x00\x01\x00\x80\x00\x00\x00\x00\x00\xff\xff\xff" + frame * frames + b";"


def _facts(data: bytes) -> None:
    from guidebuild.draw.facts import picture_facts

    picture_facts(BytesIO(data))


def _photo(data: bytes) -> None:
    from guidebuild.draw.photo import photo

    photo(data)


def jpeg(width: int, height: int) -> bytes:
    """A grey JPEG of so many pixels, all of them there."""
    from PIL import Image

    out = BytesIO()
    Image.new("L", (width, height), 90).save(out, "JPEG")
    return out.getvalue()


def _view(text: str) -> None:
    """A drawing as a view of a device, where it is let through."""
    from decimal import Decimal

    from guidebuild.device.record import View
    from guidebuild.draw.limits import drawing_refused
    from guidebuild.draw.view import read_view
    from guidebuild.source.span import Span
    from guidebuild.source.text import Source
    from tests.fuzz.readers import device

    view = View("inside", Span(Source("a.yaml", ""), 0, 0), None, (Decimal(100), Decimal(100)), {})
    if not drawing_refused(text):
        read_view(device(), view, text)


def _svg(text: str) -> None:
    from guidebuild.draw.clean import clean_svg

    clean_svg(text)


def _po(text: str) -> None:
    from guidebuild.translate.po.reader import read_po

    read_po(text)


def _xliff(text: str) -> None:
    from guidebuild.translate.xliff.entries import read_entries

    read_entries(text)


def _vtt(text: str) -> None:
    from guidebuild.translate.webvtt.cue_text import plain_text
    from guidebuild.translate.webvtt.reader import read_webvtt

    read_webvtt(text)
    plain_text(text)


def _sticks(text: str) -> None:
    from guidebuild.handover.stick_list import read_list

    read_list(text)


def _sums(data: bytes) -> None:
    from guidebuild.handover.manifest import read_manifest

    read_manifest(data)


_DOTS = '<path class="mid" d="M1 1l1 1v1z"/>'
_LAUGHS = "<!DOCTYPE l [<!ENTITY a 'lol'>" + "".join(
    f"<!ENTITY {chr(98 + n)} '{f'&{chr(97 + n)};' * 10}'>" for n in range(9)
)
BOMBS: dict[str, Callable[[], None]] = {
    "png-head": lambda: (_facts(png(60_000, 60_000, 1)), _photo(png(60_000, 60_000, 1)))[0],
    "png-pixels": lambda: _photo(png(12_000, 12_000, 12_000)),
    "png-longest": lambda: _photo(png(2**31 - 1, 1, 0)),
    "jpeg-pixels": lambda: _photo(jpeg(12_000, 10_000)),
    "png-largest": lambda: _photo(png(8_000, 5_000, 5_000)),
    "gif-frames": lambda: (_facts(gif(500_000)), _photo(gif(500_000)))[0],
    "svg-nested": lambda: _svg("<svg>" + "<g>" * 50_000 + "</g>" * 50_000 + "</svg>"),
    "svg-many": lambda: _svg("<svg>" + '<path d="M0 0l1 1"/>' * 60_000 + "</svg>"),
    "svg-path": lambda: _svg('<svg><path d="' + "M0 0" * 500_000 + '"/></svg>'),
    "svg-view": lambda: _view(f'<svg viewBox="0 0 9 9"><g id="cover">{_DOTS * 4_999}</g></svg>'),
    "svg-dust": lambda: _view(f'<svg viewBox="0 0 9 9"><g id="cover">{_DOTS * 60_000}</g></svg>'),
    "svg-laughs": lambda: _svg(_LAUGHS + "]><svg><text>&j;</text></svg>"),
    "svg-attributes": lambda: _svg("<svg><path " + "".join(f"a{n}=1 " for n in range(20_000)) + "/></svg>"),
    "po-entries": lambda: _po('msgid "a"\nmsgstr "b"\n\n' * 30_000),
    "po-string": lambda: _po('msgid ""\n' + '"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"\n' * 200_000),
    "po-slashes": lambda: _po('msgid "' + "\\" * 2_000_000 + '"\n'),
    "xliff-nested": lambda: _xliff("<a>" * 200_000),
    "xliff-laughs": lambda: _xliff(_LAUGHS + "]><xliff>&j;</xliff>"),
    "xliff-outside": lambda: _xliff("<!DOCTYPE x [<!ENTITY a SYSTEM 'file:///etc/passwd'>]><x>&a;</x>"),
    "vtt-cues": lambda: _vtt("WEBVTT\n\n" + "00:01.000 --> 00:02.000\nx\n\n" * 20_000),
    "vtt-tags": lambda: _vtt("WEBVTT\n\n00:01.000 --> 00:02.000\n" + "<i>" * 20_000),
    "csv-field": lambda: _sticks("stick,guide,steps\n" + '"' + "x" * 5_000_000),
    "csv-columns": lambda: _sticks("," * 1_000_000 + "\n" + "," * 1_000_000),
    "sums-lines": lambda: _sums(b"0" * 64 + b"  " + b"../" * 500_000 + b"\n" + b"x\n" * 500_000),
}  # fmt: skip

if __name__ == "__main__":
    BOMBS["svg-laughs"]()  # loads what reading needs before memory is counted
    with open("/proc/self/statm", encoding="ascii") as file:
        now = int(file.read().split()[0]) * resource.getpagesize()
    resource.setrlimit(resource.RLIMIT_AS, (now + BYTES, now + BYTES))
    resource.setrlimit(resource.RLIMIT_CPU, (SECONDS, SECONDS))
    BOMBS[sys.argv[1]]()
