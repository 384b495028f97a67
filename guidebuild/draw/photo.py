"""An author's photograph made ready for the page: upright, bare of metadata, in three widths.

JPEG is always among the results; WebP only where it is so much smaller that it pays (measured on the picture
itself). Colours of a wide gamut are brought to sRGB before their profile is dropped.
"""

from dataclasses import dataclass
from io import BytesIO

from PIL import Image, ImageCms, ImageOps

WIDTHS = (480, 960, 1600)
_JPEG_QUALITY = 80
_WEBP_QUALITY = 78
_PAYS = 0.8  # of the JPEG's size
_MOST_PIXELS = 120_000_000  # a larger picture is not opened: it would eat the machine's memory


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
        with Image.open(BytesIO(data)) as opened:
            if opened.width * opened.height > _MOST_PIXELS:
                return None
            upright = ImageOps.exif_transpose(opened)
            plain = _on_paper(_in_srgb(upright))
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError, MemoryError):
        return None
    widths = sorted({min(width, plain.width) for width in WIDTHS})
    files = tuple(file for width in widths for file in _files(plain, width))
    return Photo(plain.width, plain.height, files)


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
        clear = image.convert("RGBA")
        paper = Image.new("RGB", clear.size, "white")
        paper.paste(clear, mask=clear.getchannel("A"))
        return paper
    return image.convert("RGB")


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
