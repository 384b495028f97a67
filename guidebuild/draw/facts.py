"""What can be said of a picture of pixels from its head, without decoding it."""

from typing import BinaryIO

from PIL import ExifTags, Image

from guidebuild.guide.content import PictureFacts

_TURNED = range(5, 9)  # EXIF orientations that lie on their side


def picture_facts(file: BinaryIO) -> PictureFacts | None:
    """Size of the upright picture, and whether its metadata carry a place; None where it can't be read."""
    try:
        with Image.open(file) as opened:
            exif = opened.getexif()
            width, height = opened.size
            place = bool(exif.get_ifd(ExifTags.IFD.GPSInfo))
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError):
        return None
    if exif.get(ExifTags.Base.Orientation) in _TURNED:
        width, height = height, width
    return PictureFacts(width, height, place)
