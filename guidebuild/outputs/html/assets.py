"""What all pages of a site share: one style sheet, one script, the typeface."""

import re
from collections.abc import Iterable, Iterator
from functools import cache
from pathlib import Path

from guidebuild.outputs.html.fonts import font_files
from guidebuild.shipped import shipped

_STYLE, _SCRIPT = "style", "script"  # folders of a theme; their files in order make the one file
_SHEET = "sheet"
_TAKES = "takes.txt"  # of another theme: the files of the sheet that it takes as they are


@cache
def assets(theme: str) -> tuple[tuple[str, bytes], ...]:
    """Site path -> bytes, under `sheet/`. A theme without scripts has no `script` folder."""
    return tuple(_assets(shipped("themes") / theme))


def _assets(theme: Path) -> Iterator[tuple[str, bytes]]:
    yield (
        "sheet/sheet.css",
        _tight(_bare([*_taken(theme), *(theme / _STYLE).glob("*.css")])).encode(),
    )
    if (theme / _SCRIPT).is_dir():
        yield "sheet/sheet.js", _script(theme / _SCRIPT).encode()
    if theme.name == _SHEET:
        for name, data in font_files().items():
            yield f"sheet/fonts/{name}", data


def _taken(theme: Path) -> Iterator[Path]:
    """The style files that a theme takes from the sheet."""
    takes = theme / _TAKES
    for line in takes.read_text(encoding="utf-8").split() if takes.is_file() else ():
        yield theme.parent / _SHEET / line


def _tight(style: str) -> str:
    """A style sheet without the white space that only people need: 4 kB in 40."""
    tight = _COLON.sub(r"\1:", style).replace(";\n}", "}").replace(" {\n", "{").replace(";\n", ";")
    return tight.replace("}\n", "}").replace(",\n", ",")


def _script(folder: Path) -> str:
    """`now.js` runs at once, the numbered files as one function when the page stands."""
    now, then = _joined(folder, "now.js"), _joined(folder, "[0-9]*.js")
    return (
        f'"use strict";\n{now}document.addEventListener("DOMContentLoaded", () => {{\n{then}}});\n'
    )


def _joined(folder: Path, pattern: str) -> str:
    """The files of a folder one after the other."""
    return _bare(folder.glob(pattern))


def _bare(paths: Iterable[Path]) -> str:
    """Files in the order of their names, without their comments and empty lines."""
    ordered = sorted(paths, key=lambda path: path.name)
    files = (path.read_text(encoding="utf-8") for path in ordered)
    bare = _COMMENT.sub("", "\n".join(files))
    return "\n".join(line.strip() for line in bare.splitlines() if line.strip()) + "\n"


_COLON = re.compile(r"^([a-z-]+): ", re.MULTILINE)
_COMMENT = re.compile(r"/\*.*?\*/|^[ \t]*//[^\n]*$", re.DOTALL | re.MULTILINE)
