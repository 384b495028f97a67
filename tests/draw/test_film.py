"""A film's length from its head. The heads are built by the public structure of the two containers."""

import struct
from decimal import Decimal
from io import BytesIO

import pytest
from hypothesis import given
from hypothesis import strategies as st

from guidebuild.draw.film import film_seconds


def element(id_: str, data: bytes) -> bytes:
    return bytes.fromhex(id_) + bytes([0x80 | len(data)]) + data


def webm(milliseconds: float) -> bytes:
    """EBML header, a Segment of unknown size, Info with TimestampScale and Duration, the first Cluster."""
    info = element("2AD7B1", (1_000_000).to_bytes(3, "big"))
    info += element("4489", struct.pack(">d", milliseconds))
    header = element("1A45DFA3", element("4282", b"webm"))
    return header + bytes.fromhex("1853806701FFFFFFFFFFFFFF") + element("1549A966", info)


def box(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I4s", 8 + len(data), kind) + data


def mp4(scale: int, duration: int) -> bytes:
    """ftyp, a free box, moov with mvhd of version 0."""
    head = b"\0" * 4 + struct.pack(">IIII", 0, 0, scale, duration) + b"\0" * 80
    return (
        box(b"ftyp", b"isom\0\0\0\0") + box(b"free", b"\0" * 9) + box(b"moov", box(b"mvhd", head))
    )


@pytest.mark.parametrize("data", [webm(130_500), mp4(1000, 130_500), mp4(600, 78_300)])
def test_the_length_is_read_from_the_head(data: bytes) -> None:
    assert film_seconds(BytesIO(data)) == Decimal("130.500")


@given(st.binary(max_size=200), st.integers(0, 60))
def test_no_bytes_stop_the_reader(tail: bytes, cut: int) -> None:
    for start in (b"", webm(10)[:cut], mp4(1, 1)[:cut]):
        film_seconds(BytesIO(start + tail))
