"""Whatever a camera wrote into pictures and films, no file of the site tells it."""

from io import BytesIO

from PIL import Image

from guidebuild.outputs.html.site import make_site
from guidebuild.read.content import read_content
from tests.draw.test_film import box
from tests.outputs.demo import CONTENT, HEAD, load, readings

MAKER, SERIAL = "Tarnwick Camera 9", "SN-73311-PLACE"
_GPS, _NORTH, _LATITUDE, _EAST, _LONGITUDE = 0x8825, 1, 2, 3, 4  # Exif 2.32, 4.6.6
_SEEN: list[str] = []


def photographed(data: bytes) -> bytes:
    """The picture as a telephone saves it: on its side, with maker, place and a small picture of itself."""
    picture = Image.open(BytesIO(data)).convert("RGB")
    exif = Image.Exif()
    exif[0x010F], exif[0x0112], exif[0x013B] = MAKER, 6, SERIAL
    exif.get_ifd(_GPS).update(
        {_NORTH: "N", _LATITUDE: (53.0, 28.0, 7.0), _EAST: "W", _LONGITUDE: (2.0, 14.0, 3.0)}
    )
    out = BytesIO()
    picture.save(out, "JPEG", exif=exif, comment=SERIAL.encode())
    return out.getvalue()


def from_a_camera(path: str) -> bytes | None:
    """A file of the demo, as if a telephone had just made it."""
    data = load(path)
    if data is None:
        return None
    if path.endswith(".jpg"):
        data = photographed(data)
        assert Image.open(BytesIO(data)).getexif().get_ifd(_GPS)
        _SEEN.append(path)
    if path.endswith(".mp4"):
        data += box(b"moov", box(b"udta", box(b"\xa9xyz", SERIAL.encode())))
        _SEEN.append(path)
    return data


def test_no_place_leaves_the_house() -> None:
    content, _ = read_content(CONTENT)
    files = make_site(content, [readings()[HEAD].proof], from_a_camera)
    assert {"jpg", "mp4"} <= {path.rpartition(".")[2] for path in _SEEN}
    pictures = {path: data for path, data in files.items() if path.endswith((".jpg", ".webp"))}
    assert len(pictures) >= 8
    for path, data in files.items():
        assert MAKER.encode() not in data and SERIAL.encode() not in data, path
        assert b"Exif" not in data[:4096], path
    for path, data in pictures.items():
        with Image.open(BytesIO(data)) as one:
            assert not one.getexif() and not one.getexif().get_ifd(_GPS), path
