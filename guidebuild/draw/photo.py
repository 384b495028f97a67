"""An author's photograph made ready for the page: upright, bare of metadata, in three widths.

JPEG is always among the results; WebP only where it is so much smaller that it pays (measured on the picture
itself). Colours of a wide gamut are brought to sRGB before their profile is dropped.
"""

from dataclasses import dataclass
from io import BytesIO

from PIL import Image, ImageCms, ImageOps

from guidebuild.draw.limits import FORMATS, UNREADABLE, refused, scale, upright

WIDTHS = (480, 960, 1600)
_JPEG_QUALITY = 80
_WEBP_QUALITY = 78
_PAYS = 0.8  # of the JPEG's size


@dataclass(frozen=True, slots=True)
class Rendition:
    """One file: `format` is `jpg` or `webp`, sizes in pixels."""

    width: int
    height: int
    format: str
    data: bytes


@dataclass(frozen=True, slots=True)
class Photo:
    """Size of the upright original in pixels, and its files, the narrowest first."""

    width: int
    height: int
    renditions: tuple[Rendition, ...]


def photo(data: bytes) -> Photo | None:
    """The photograph in up to three widths, never wider than it is; None where it is no readable picture."""
    try:
        with Image.open(BytesIO(data), formats=FORMATS) as opened:
            if refused(opened):
                return None
            width, height = upright(opened)
            plain = _opened(opened)
        widths = sorted({min(one, plain.width) for one in WIDTHS})
        files = tuple(file for one in widths for file in _files(plain, one))
    except UNREADABLE:
        return None
    return Photo(width, height, files)


def _opened(image: Image.Image) -> Image.Image:
    """Upright, in sRGB, on white; decoded no larger than it has to be."""
    by = scale(image) or 1
    if by > 1:
        image.draft(None, (image.width // by, image.height // by))
    ImageOps.exif_transpose(image, in_place=True)
    return _on_paper(_in_srgb(image))


def _in_srgb(image: Image.Image) -> Image.Image:
    """Colours by the profile that came with the picture; a broken profile is ignored."""
    profile = image.info.get("icc_profile")
    if not profile or image.mode not in {"RGB", "CMYK", "L"}:
        return image
    try:
        source = ImageCms.ImageCmsProfile(BytesIO(profile))
        target = ImageCms.createProfile("sRGB")
        return ImageCms.profileToProfile(image, source, target, outputMode="RGB") or image
    except (ImageCms.PyCMSError, OSError):
        return image


def _on_paper(image: Image.Image) -> Image.Image:
    """RGB without transparency: what is clear shows white paper."""
    if "transparency" in image.info or image.mode in {"RGBA", "LA", "PA"}:
        clear = image if image.mode == "RGBA" else image.convert("RGBA")
        paper = Image.new("RGB", clear.size, "white")
        paper.paste(clear, mask=clear.getchannel("A"))
        return paper
    return image if image.mode == "RGB" else image.convert("RGB")


def _files(image: Image.Image, width: int) -> list[Rendition]:
    height = max(1, round(image.height * width / image.width))
    small = (
        image if width == image.width else image.resize((width, height), Image.Resampling.LANCZOS)
    )
    small.info.clear()  # no profile, comment or resolution goes along
    jpeg = _saved(small, "JPEG", quality=_JPEG_QUALITY, optimize=True, progressive=True)
    webp = _saved(small, "WEBP", quality=_WEBP_QUALITY, method=4)
    found = [Rendition(width, height, "jpg", jpeg)]
    if len(webp) < _PAYS * len(jpeg):
        found.append(Rendition(width, height, "webp", webp))
    return found


def _saved(image: Image.Image, format: str, **how: int) -> bytes:
    out = BytesIO()
    image.save(out, format, **how)
    return out.getvalue()
