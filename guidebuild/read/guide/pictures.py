"""Where a guide's pictures and films lie."""

from collections.abc import Sequence

from guidebuild.guide.prose import Picture
from guidebuild.read.guide.steps import Find
from guidebuild.read.library import Library
from guidebuild.read.markdown.prose import path_of
from guidebuild.read.markdown.runs import Image
from guidebuild.read.references.record import there
from guidebuild.source.text import Source


def folders(path: str, devices: Sequence[str]) -> tuple[str, ...]:
    """The guide's own folder, the one that it lies in, then those of its devices."""
    own = path.rpartition(".")[0]
    return (own, path.rpartition("/")[0], *(f"devices/{device}" for device in devices))


def finder(source: Source, devices: Sequence[str], library: Library) -> Find:
    """How a picture named in this file is found."""
    places = folders(source.path, devices)

    def find(image: Image) -> Picture | None:
        file = path_of(image)
        path = there(file, places, library)
        return None if path is None else Picture(file, path, image.alt, image.span)

    return find
