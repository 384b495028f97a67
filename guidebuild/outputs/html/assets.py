"""What all pages of a site share: one style sheet, one script, the typeface."""

from collections.abc import Iterator
from functools import cache

from guidebuild.outputs.html.fonts import font_files
from guidebuild.shipped import shipped

_SHARED = ("sheet.css", "sheet.js")


@cache
def assets(theme: str) -> tuple[tuple[str, bytes], ...]:
    """Site path -> bytes, under `sheet/`."""
    return tuple(_assets(theme))


def _assets(theme: str) -> Iterator[tuple[str, bytes]]:
    folder = shipped("themes") / theme
    for name in _SHARED:
        file = folder / name
        if file.is_file():
            yield f"sheet/{name}", file.read_bytes()
    for name, data in font_files().items():
        yield f"sheet/fonts/{name}", data
