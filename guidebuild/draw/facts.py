"""What can be said of a picture of pixels from its head, without decoding it."""

from typing import BinaryIO

from PIL import ExifTags, Image

from guidebuild.draw.limits import FORMATS, UNREADABLE, upright
from guidebuild.guide.content import PictureFacts


def picture_facts(file: BinaryIO) -> PictureFacts | None:
    """Size of the upright picture, and whether its metadata carry a place; None where it can't be read."""
    try:
        with Image.open(file, formats=FORMATS) as opened:
            exif = opened.getexif()
            width, height = upright(opened)
            place = bool(exif.get_ifd(ExifTags.IFD.GPSInfo))
    except UNREADABLE:
        return None
    return PictureFacts(width, height, place)
