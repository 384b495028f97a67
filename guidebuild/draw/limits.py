"""Which pictures a page can show: by their kind, their pixels, their shape, their bytes.

Memory is the reason: whatever is let through is made ready in less than 512 MiB. Only what is listed here is opened at
all, as the library knows formats that start other programs.
"""

import re
from dataclasses import dataclass
from typing import BinaryIO

from PIL import ExifTags, Image

Image.MAX_IMAGE_PIXELS = (
    None  # the library would only warn: `refused` is asked as soon as the head is read
)
FORMATS = ("JPEG", "PNG", "WEBP", "GIF")
MOST_PIXELS = 40_000_000  # decoded at once: 160 MB with transparency, and a copy where it is turned
MOST_WITH_FRAMES = 20_000_000  # of what may be a film: it is composed on a canvas of its own
MOST_OF_A_PHOTO = 120_000_000  # of a JPEG in rows: decoded at a half, a quarter or an eighth
WIDE, ENOUGH = 3200, 1600  # pixels across: twice what the widest page takes; what it takes
LOW, HIGH = 10, 4  # how often the height goes into the width, the width into the height
LARGEST = 64 * 2**20  # bytes of a picture of pixels
LARGEST_DRAWING, MOST_SHAPES = 2 * 2**20, 5_000  # bytes, elements
UNREADABLE = (OSError, ValueError, SyntaxError, Image.DecompressionBombError, MemoryError)
_TURNED = range(5, 9)  # EXIF orientations that lie on their side
_SHAPE = re.compile(
    r"<(?:\w+:)?(?:path|rect|circle|ellipse|line|polyline|polygon|text)\b", re.IGNORECASE
)


@dataclass(frozen=True, slots=True)
class Refused:
    """Why the page can't show a picture, and what to do: each goes on from "the page can't show it: "."""

    why: str
    do: str


def upright(opened: Image.Image) -> tuple[int, int]:
    """Width and height in pixels as the picture is looked at."""
    turned = opened.getexif().get(ExifTags.Base.Orientation) in _TURNED
    return (opened.height, opened.width) if turned else opened.size


def scale(opened: Image.Image) -> int | None:
    """By how much its sides are divided while it is decoded: 1, and for a JPEG 2, 4 or 8; None: it is too large."""
    pixels, wide = opened.width * opened.height, upright(opened)[0]
    if opened.format not in ("JPEG", "MPO"):
        return (
            1 if pixels <= (MOST_PIXELS if opened.format == "PNG" else MOST_WITH_FRAMES) else None
        )
    # one that comes in passes is held as a whole before it is decoded
    if pixels > (MOST_PIXELS if opened.info.get("progressive") else MOST_OF_A_PHOTO):
        return None
    best = max(by for by in (1, 2, 4, 8) if by == 1 or wide >= by * WIDE)
    while pixels > best**2 * MOST_PIXELS:
        best *= 2
    return best if best == 1 or (best <= 8 and wide >= best * ENOUGH) else None


def refused(opened: Image.Image) -> Refused | None:
    """What stands against a picture of which only the head was read."""
    width, height = upright(opened)
    if width > LOW * height or height > HIGH * width:
        return Refused(f"it is {width} by {height} pixels", "cut it to what matters")
    if scale(opened) is None:
        millions = f"{width * height / 1e6:.0f} million pixels"
        return Refused(f"it has {millions}", "scale it down to 4000 pixels across")
    return None


def is_drawing(path: str) -> bool:
    """Whether a picture is made of lines, by its name."""
    return path.lower().endswith(".svg")


def too_many_bytes(path: str, size: int) -> Refused | None:
    """What stands against a picture before it is read at all; `size` in bytes."""
    if size <= (LARGEST_DRAWING if is_drawing(path) else LARGEST):
        return None
    do = "export it without pictures and with fewer points"
    return Refused(f"it has {size / 2**20:.0f} MB", do if is_drawing(path) else "scale it down")


def picture_refused(file: BinaryIO) -> Refused | None:
    """What stands against a picture of pixels; it is decoded for that, as small as can be."""
    try:
        with Image.open(file, formats=FORMATS) as opened:
            found = refused(opened)
            if found is None:
                opened.draft(None, (1, 1))
                opened.load()
            return found
    except UNREADABLE:
        return Refused(
            "it is damaged, or none of JPEG, PNG, WebP, GIF and SVG", "save it again as JPEG or PNG"
        )


def drawing_refused(text: str) -> Refused | None:
    """What stands against an author's drawing, as a view or a picture."""
    shapes = len(_SHAPE.findall(text))
    if shapes > MOST_SHAPES:
        return Refused(f"it has {shapes} shapes", "leave out what nobody looks for")
    return None
