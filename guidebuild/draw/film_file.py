"""An author's film made ready for the page: how large it is, and its file without what a camera wrote into it.

A phone writes where and when it filmed into the head. These parts become empty ones of the same length, so that
nothing else in the file moves.

Sources: ISO/IEC 14496-12 (`tkhd`, its matrix and size; `udta`, `meta`, `uuid`); the Matroska element registry
(PixelWidth, PixelHeight, Tags, Void), as restated in public documentation.
"""

import struct

from guidebuild.draw.film_parts import Part, boxes, elements

_EBML = bytes.fromhex("1A45DFA3")
_SEGMENT, _TRACKS, _ENTRY, _VIDEO = (
    bytes.fromhex(one) for one in ("18538067", "1654AE6B", "AE", "E0")
)
_WIDTH, _HEIGHT = b"\xb0", b"\xba"
_INFO, _VOID = bytes.fromhex("1549A966"), b"\xec"
_SAID = frozenset(
    bytes.fromhex(one) for one in ("1254C367", "1941A469", "7BA9", "4461")
)  # title, date
_TOLD = frozenset({b"udta", b"meta", b"uuid"})


def film_size(data: bytes) -> tuple[int, int] | None:
    """Width and height of the upright picture in pixels; None where the head does not tell."""
    try:
        found = _webm_size(data) if data.startswith(_EBML) else _mp4_size(data)
    except (struct.error, RecursionError):
        return None
    return found if found and all(0 < side < 2**15 for side in found) else None


def bare_film(data: bytes) -> bytes:
    """The file without tags, places, dates and attachments; every other byte stays where it was."""
    bare = bytearray(data)
    for part in (
        elements(data, {_SEGMENT, _INFO})
        if data.startswith(_EBML)
        else boxes(data, {b"moov", b"trak"})
    ):
        if part.kind in _TOLD:
            bare[part.start + 4 : part.end] = b"free" + bytes(part.end - part.start - 8)
        elif part.kind in _SAID:
            bare[part.start : part.end] = _void(part)
        elif part.kind in (b"mvhd", b"tkhd"):
            _undated(bare, part)
    return bytes(bare)


def _void(part: Part) -> bytes:
    """An empty element of the same length: its size takes what the id leaves of the head."""
    whole = part.end - part.start
    wide = min(8, part.body - part.start - 1)
    inside = whole - 1 - wide
    return _VOID + ((1 << 7 * wide) | inside).to_bytes(wide, "big") + bytes(inside)


def _undated(bare: bytearray, part: Part) -> None:
    """Both dates, which stand behind version and flags, become 0: not set."""
    if part.body + 4 < part.end:
        wide = 16 if bare[part.body] == 1 else 8
        last = min(part.body + 4 + wide, part.end)
        bare[part.body + 4 : last] = bytes(last - part.body - 4)


def _mp4_size(data: bytes) -> tuple[int, int] | None:
    for part in boxes(data, {b"moov", b"trak"}):
        if part.kind == b"tkhd" and part.end - part.body >= 84:
            more = 12 if data[part.body] == 1 else 0  # dates and length are wider in version 1
            a, _, _, _, d = struct.unpack_from(">5i", data, part.body + 40 + more)
            width, height = struct.unpack_from(">II", data, part.body + 76 + more)
            if width and height:
                size = width >> 16, height >> 16
                return size if a or d else size[::-1]  # filmed with the phone upright
    return None


def _webm_size(data: bytes) -> tuple[int, int] | None:
    sides: dict[bytes, int] = {}
    for part in elements(data, {_SEGMENT, _TRACKS, _ENTRY, _VIDEO}):
        if part.kind in (_WIDTH, _HEIGHT):
            sides.setdefault(part.kind, int.from_bytes(data[part.body : part.end], "big"))
        if len(sides) == 2:
            return sides[_WIDTH], sides[_HEIGHT]
    return None
