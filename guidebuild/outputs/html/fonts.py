"""The typeface of the sheet with its licence, as files of a site."""

from functools import cache
from importlib import resources

_PACKAGE = "fontpkg_atkinson_hyperlegible"
_FACES = ("Regular", "Bold")


@cache
def font_files() -> dict[str, bytes]:
    """Names under `fonts/`, in small letters as a stick wants them, and their bytes."""
    root = resources.files(_PACKAGE)
    files = {
        f"atkinson-hyperlegible-{face.lower()}.ttf": root.joinpath(
            "files", f"AtkinsonHyperlegible-{face}.ttf"
        ).read_bytes()
        for face in _FACES
    }
    return {**files, "license.txt": root.joinpath("LICENSE").read_bytes()}
