"""A copy of a content folder in which mending is tried before anybody's file is touched."""

import os
import shutil
import tempfile
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

from guidebuild.build.whole_file import beside

BOM = b"\xef\xbb\xbf"


@contextmanager
def scratch(root: Path) -> Iterator[Path]:
    """A folder with the same content, gone afterwards; files are linked where the disk can do so."""
    with tempfile.TemporaryDirectory(prefix="guidebuild-") as folder:
        copy = Path(folder) / "content"
        shutil.copytree(root, copy, symlinks=True, copy_function=_link)
        yield copy


def _link(source: str, target: str) -> None:
    try:
        os.link(source, target, follow_symlinks=False)
    except (OSError, NotImplementedError):
        shutil.copy2(source, target, follow_symlinks=False)


def write(root: Path, texts: Mapping[str, str]) -> None:
    """Replace files as wholes; a byte-order mark and the file's mode stay, and no linked twin changes."""
    for name, text in texts.items():
        path = Path(os.path.realpath(root / name))
        mark = BOM if path.read_bytes().startswith(BOM) else b""
        with beside(path, f".{path.name}.guidebuild") as written:
            written.write_bytes(mark + text.encode("utf-8"))
            shutil.copymode(path, written)
