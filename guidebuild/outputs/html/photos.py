"""The photographs of all guides, made ready once for all languages, and the files that they become."""

from collections.abc import Iterator, Mapping, Sequence
from pathlib import PurePosixPath
from xml.etree import ElementTree

from guidebuild.draw.clean import clean_svg
from guidebuild.draw.limits import drawing_refused, is_drawing
from guidebuild.draw.photo import Photo, Rendition, photo
from guidebuild.guide.inside import pictures_in
from guidebuild.outputs.html.paths import portable
from guidebuild.outputs.html.views import Load
from guidebuild.proof.proof import Proof


def photographs(proofs: Sequence[Proof], load: Load) -> dict[str, Photo]:
    """By content path; a file that is no picture is left out (a rule has told it)."""
    paths = dict.fromkeys(one.path for proof in proofs for one in pictures_in(proof.guide))
    found = {path: _ready(path, load(path)) for path in paths}
    return {path: one for path, one in found.items() if one is not None}


def photo_files(photos: Mapping[str, Photo]) -> Iterator[tuple[str, bytes]]:
    """Every rendition at its site path."""
    for path, one in photos.items():
        for rendition in one.renditions:
            yield photo_path(path, rendition), rendition.data


def photo_path(path: str, rendition: Rendition) -> str:
    """`photos/larch-p2/replace-the-print-head/head-960.jpg`: the same file for every language."""
    pure = PurePosixPath(path)
    folders = [portable(part) for part in pure.parts[1:-1]]
    name = f"{portable(pure.stem)}-{rendition.width}.{rendition.format}"
    return "/".join(("photos", *folders, name))


def _ready(path: str, data: bytes | None) -> Photo | None:
    if data is None:
        return None
    if is_drawing(path):
        return _drawing(data.decode("utf-8", "replace"))
    return photo(data)


def _drawing(svg: str) -> Photo | None:
    """An author's drawing as one file, cut down to its shapes; it is as large as its `viewBox`."""
    if drawing_refused(svg):
        return None
    root = clean_svg(svg)
    sides = (root.get("viewBox") or "").replace(",", " ").split()
    try:
        width, height = (max(1, round(float(side))) for side in sides[2:4])
    except (ValueError, OverflowError):  # no numbers, or one without end
        return None
    root.set("xmlns", "http://www.w3.org/2000/svg")
    data = ElementTree.tostring(root, encoding="utf-8")
    return Photo(width, height, (Rendition(width, height, "svg", data),))
