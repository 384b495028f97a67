"""Photographs: upright, without metadata, in at most three widths; anything unreadable is None."""

from io import BytesIO

import pytest
from PIL import Image

from guidebuild.draw.photo import photo
from guidebuild.draw.photo_marks import PhotoMarks, PhotoPoint, overlay_svg
from tests.draw.reading import of_class, tree

ORIENTATION, GPS, MAKER = 0x0112, 0x8825, 0x010F


def taken(width: int, height: int, orientation: int = 1, mode: str = "RGB") -> bytes:
    """A picture with its upper left quarter black, as a camera would store it."""
    image = Image.new(mode, (width, height), "white")
    image.paste("black", (0, 0, width // 2, height // 2))
    exif = Image.Exif()
    exif[ORIENTATION] = orientation
    exif[MAKER] = "a camera"
    exif[GPS] = {1: "N", 2: (51.0, 30.0, 0.0)}
    out = BytesIO()
    image.save(out, "JPEG", exif=exif, comment=b"taken at home")
    return out.getvalue()


def test_three_widths_and_never_wider_than_it_is() -> None:
    large, small = photo(taken(2400, 1200)), photo(taken(700, 350))
    assert large is not None and small is not None
    assert [(one.width, one.height) for one in large.renditions if one.format == "jpg"] == [
        (480, 240),
        (960, 480),
        (1600, 800),
    ]
    assert [one.width for one in small.renditions if one.format == "jpg"] == [480, 700]


# where the dark quarter lies on the upright picture, by EXIF orientation (CIPA DC-008, tag 0x0112)
DARK = {1: (0, 0), 2: (1, 0), 3: (1, 1), 4: (0, 1), 5: (0, 0), 6: (1, 0), 7: (1, 1), 8: (0, 1)}


@pytest.mark.parametrize(("orientation", "corner"), DARK.items())
def test_upright_by_exif(orientation: int, corner: tuple[int, int]) -> None:
    found = photo(taken(400, 200, orientation))
    assert found is not None
    image = Image.open(BytesIO(found.renditions[0].data)).convert("L")
    assert (image.width > image.height) == (orientation <= 4)
    spots = {
        (x, y): image.getpixel((image.width * (1 + 2 * x) // 4, image.height * (1 + 2 * y) // 4))
        for x in (0, 1)
        for y in (0, 1)
    }
    assert [spot for spot, grey in spots.items() if grey == 0] == [corner]


def test_metadata_are_gone() -> None:
    found = photo(taken(900, 600, 6))
    assert found is not None
    for one in found.renditions:
        image = Image.open(BytesIO(one.data))
        assert not image.getexif()
        assert not {"exif", "comment", "icc_profile", "xmp"} & image.info.keys()
        assert b"a camera" not in one.data and b"taken at home" not in one.data


def test_clear_parts_show_paper() -> None:
    out = BytesIO()
    Image.new("RGBA", (50, 50), (0, 0, 0, 0)).save(out, "PNG")
    found = photo(out.getvalue())
    assert found is not None
    assert Image.open(BytesIO(found.renditions[0].data)).getpixel((5, 5)) == (255, 255, 255)


UNREADABLE = [b"", b"no picture", taken(300, 200)[:200], b"\xff\xd8\xff", b"<svg/>"]


@pytest.mark.parametrize("data", UNREADABLE)
def test_unreadable_pictures_are_none(data: bytes) -> None:
    assert photo(data) is None


@pytest.mark.parametrize("mode", ["L", "CMYK", "RGB"])
def test_colour_models(mode: str) -> None:
    assert photo(taken(100, 80, mode=mode)) is not None


def test_the_same_picture_gives_the_same_bytes() -> None:
    assert photo(taken(500, 300)) == photo(taken(500, 300))


def test_marks_lie_where_the_per_cents_say() -> None:
    marks = PhotoMarks(
        points=[PhotoPoint("1", (0, 0)), PhotoPoint("2", (100, 100))],
        here=[(50, 50)],
        keep_out=[((10, 10), (20, 20))],
        arrows=[[(0, 50), (25, 50)]],
    )
    overlay = tree(overlay_svg(marks, 400, 300, "marks"))
    frame = of_class(overlay, "mid", "rect")[0]
    x, y, width, height = (float(frame.get(name, "")) for name in ("x", "y", "width", "height"))
    assert height / width == pytest.approx(0.75)
    (ring,) = of_class(overlay, "now", "circle")
    assert (float(ring.get("cx", "")), float(ring.get("cy", ""))) == pytest.approx(
        (x + width / 2, y + height / 2)
    )
    numbers = {node.text: float(node.get("x", "")) for node in of_class(overlay, "num")}
    assert numbers["1"] < x and numbers["2"] > x + width  # on the paper beside the picture
    assert len(of_class(overlay, "tip-now")) == 1
