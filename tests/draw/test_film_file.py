"""A film's size, and its file without what a camera wrote into it. The heads are built by the public structure of the
two containers."""

import struct

import pytest
from hypothesis import given
from hypothesis import strategies as st

from guidebuild.draw.film_file import bare_film, film_size
from guidebuild.draw.film_parts import boxes, elements
from tests.draw.test_film import box, element

PLACE = b"+53.1000-002.2000/"
UPRIGHT, TURNED = (0x10000, 0, 0, 0, 0x10000), (0, 0x10000, 0, -0x10000, 0)


def track_head(width: int, height: int, matrix: tuple[int, ...], version: int = 0) -> bytes:
    """`tkhd`: dates and length are 20 bytes in version 0 and 32 in version 1; sizes are 16.16."""
    dates = b"\x01" * (32 if version else 20)
    rest = struct.pack(">9i", *matrix, 0, 0, 0, 0x40000000)
    sizes = struct.pack(">II", width << 16, height << 16)
    return box(b"tkhd", bytes([version, 0, 0, 7]) + dates + b"\0" * 16 + rest + sizes)


def mp4(head: bytes) -> bytes:
    """A film of a telephone: sound before picture, the place in `udta` and in `meta`, data behind."""
    sound = box(b"trak", track_head(0, 0, UPRIGHT))
    told = box(b"udta", box(b"\xa9xyz", PLACE)) + box(b"meta", PLACE)
    moov = box(b"mvhd", b"\0" * 4 + b"\x99" * 8 + b"\0" * 88) + sound + box(b"trak", head) + told
    return box(b"ftyp", b"isom") + box(b"moov", moov) + box(b"mdat", b"picture " * 20)


def webm(width: int, height: int) -> bytes:
    """A WebM with a title in its Info and a place in its Tags."""
    sides = element("B0", width.to_bytes(2, "big")) + element("BA", height.to_bytes(2, "big"))
    track = element("1654AE6B", element("AE", element("E0", sides)))
    info = element("1549A966", element("7BA9", PLACE))
    inside = info + track + element("1254C367", PLACE * 3) + element("1F43B675", b"picture")
    header = element("1A45DFA3", element("4282", b"webm"))
    return header + bytes.fromhex("1853806701FFFFFFFFFFFFFF") + inside


@pytest.mark.parametrize(
    ("data", "size"),
    [
        (mp4(track_head(640, 360, UPRIGHT)), (640, 360)),
        (mp4(track_head(640, 360, UPRIGHT, version=1)), (640, 360)),
        (mp4(track_head(1920, 1080, TURNED)), (1080, 1920)),
        (webm(1280, 720), (1280, 720)),
        (b"no film", None),
    ],
)
def test_the_size_is_that_of_the_upright_picture(data: bytes, size: tuple[int, int] | None) -> None:
    assert film_size(data) == size


@pytest.mark.parametrize("data", [mp4(track_head(640, 360, UPRIGHT)), webm(1280, 720)])
def test_nothing_of_the_place_is_left_and_nothing_moves(data: bytes) -> None:
    assert data.count(PLACE) >= 2
    bare = bare_film(data)
    assert PLACE not in bare and len(bare) == len(data)
    assert bare.find(b"picture") == data.find(b"picture")
    assert film_size(bare) == film_size(data)


def test_dates_are_not_set() -> None:
    """ISO/IEC 14496-12: creation and modification time stand behind version and flags."""
    assert b"\x99" not in bare_film(mp4(track_head(640, 360, UPRIGHT)))


def test_what_is_taken_out_is_an_empty_part_of_the_same_length() -> None:
    """`free` is the standard's own box for it, Void (EC) the registry's element."""
    data = mp4(track_head(640, 360, UPRIGHT))
    before, after = (list(boxes(one, {b"moov"})) for one in (data, bare_film(data)))
    assert [one[1:] for one in before] == [one[1:] for one in after]
    assert [one.kind for one in after].count(b"free") == 2
    data = webm(1280, 720)
    parts = list(elements(bare_film(data), {bytes.fromhex("18538067")}))
    assert [one.kind for one in parts].count(b"\xec") == 1
    assert parts[-1].end == len(data)


@given(st.binary(max_size=300), st.integers(0, 300))
def test_no_bytes_stop_the_reader(tail: bytes, cut: int) -> None:
    for start in (b"", webm(10, 10)[:cut], mp4(track_head(1, 1, TURNED))[:cut]):
        data = start + tail
        film_size(data)
        assert len(bare_film(data)) == len(data)
