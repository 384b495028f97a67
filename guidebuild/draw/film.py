"""How long a film is, from its head: WebM (EBML) and MP4 (boxes), without decoding it.

Sources: IETF RFC 8794 (EBML) and the Matroska element registry (Segment, Info, TimestampScale, Duration);
ISO/IEC 14496-12 box structure (`moov`, `mvhd`), as restated in public documentation.
"""

import struct
from decimal import Decimal
from typing import BinaryIO

_EBML, _SEGMENT, _INFO = 0x1A45DFA3, 0x18538067, 0x1549A966
_SCALE, _DURATION, _CLUSTER = 0x2AD7B1, 0x4489, 0x1F43B675
_MOST_ELEMENTS = 10_000  # a head has a few dozen: more is no film of ours


def film_seconds(file: BinaryIO) -> Decimal | None:
    """The length in seconds, to the millisecond; None where the file is no film that we can read."""
    start = file.read(12)
    file.seek(0)
    try:
        if start[:4] == _EBML.to_bytes(4, "big"):
            return _webm(file)
        if start[4:8] == b"ftyp":
            return _mp4(file)
    except (struct.error, IndexError, ValueError, ArithmeticError):
        return None
    return None


def _webm(file: BinaryIO) -> Decimal | None:
    scale, duration = 1_000_000, None
    for _ in range(_MOST_ELEMENTS):
        head = _element(file)
        if head is None or head[0] == _CLUSTER:
            break
        id_, size = head
        if id_ in (_SEGMENT, _INFO):
            continue  # go inside
        if id_ == _SCALE:
            scale = int.from_bytes(file.read(size), "big")
        elif id_ == _DURATION:
            duration = struct.unpack(">d" if size == 8 else ">f", file.read(size))[0]
        else:
            file.seek(size, 1)
    return None if duration is None else _seconds(Decimal(duration) * scale / 10**9)


def _element(file: BinaryIO) -> tuple[int, int] | None:
    """Id and size of an element; an unknown size is 0, since only what we go into has one."""
    first = file.read(1)
    if not first:
        return None
    length = 9 - first[0].bit_length()
    id_ = int.from_bytes(first + file.read(length - 1), "big")
    first = file.read(1)
    length = 9 - first[0].bit_length()
    value = first[0] & ((1 << (8 - length)) - 1)
    size = int.from_bytes(bytes([value]) + file.read(length - 1), "big")
    return id_, 0 if size == (1 << (7 * length)) - 1 else size


def _mp4(file: BinaryIO) -> Decimal | None:
    for _ in range(_MOST_ELEMENTS):
        head = file.read(8)
        if len(head) < 8:
            return None
        size, kind = struct.unpack(">I4s", head)
        used = 8
        if size == 1:
            size, used = struct.unpack(">Q", file.read(8))[0], 16
        if kind == b"moov":
            continue  # go inside
        if kind == b"mvhd":
            return _header(file.read(32))
        if size < used:
            return None
        file.seek(size - used, 1)
    return None


def _header(data: bytes) -> Decimal | None:
    """Time scale and duration stand behind the two dates, which are wider in version 1."""
    form, start = (">IQ", 20) if data[0] == 1 else (">II", 12)
    scale, duration = struct.unpack(form, data[start : start + struct.calcsize(form)])
    return _seconds(Decimal(duration) / scale) if scale else None


def _seconds(value: Decimal) -> Decimal:
    return value.quantize(Decimal("0.001"))
