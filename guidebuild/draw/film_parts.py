"""The parts that a film's file is made of: boxes of MP4, elements of WebM, in memory.

Sources: ISO/IEC 14496-12 box structure; IETF RFC 8794 (EBML), as restated in public documentation.
"""

import struct
from collections.abc import Container, Iterator
from typing import NamedTuple


class Part(NamedTuple):
    """`kind` is a box's four letters or an element's id; its head begins at `start`, its body at `body`."""

    kind: bytes
    start: int
    body: int
    end: int


def boxes(
    data: bytes, inside: Container[bytes], start: int = 0, end: int | None = None
) -> Iterator[Part]:
    """Every box of an MP4 in order; of those in `inside`, what is in them follows. A broken rest is left out."""
    end = len(data) if end is None else end
    while start + 8 <= end:
        size, kind = struct.unpack_from(">I4s", data, start)
        body = start + 8
        if size == 1 and start + 16 <= end:
            size, body = struct.unpack_from(">Q", data, start + 8)[0], start + 16
        after = end if size == 0 else start + size
        if after < body or after > end:
            return
        yield Part(kind, start, body, after)
        if kind in inside:
            yield from boxes(data, inside, body, after)
        start = after


def elements(
    data: bytes, inside: Container[bytes], start: int = 0, end: int | None = None
) -> Iterator[Part]:
    """Every element of a WebM in the same way; one of unknown size ends with what it is in."""
    end = len(data) if end is None else end
    while start < end:
        wide = 9 - data[start].bit_length()
        at = start + wide
        if wide > 4 or at >= end:
            return
        long = 9 - data[at].bit_length()
        body = at + long
        if long > 8 or body > end:
            return
        size = int.from_bytes(data[at:body], "big") - (1 << 7 * long)
        unknown = size == (1 << 7 * long) - 1
        after = end if unknown else body + size
        if after > end:
            return
        yield Part(data[start:at], start, body, after)
        if data[start:at] in inside:
            yield from elements(data, inside, body, after)
        start = after
