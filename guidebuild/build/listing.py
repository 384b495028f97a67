"""The list of files that we wrote into a site: only these are ever replaced or taken away."""

from collections.abc import Iterable, Iterator
from pathlib import Path

from guidebuild.build.outputs import safe

NAME = "guidebuild-files.txt"
HEAD = "# Written by guidebuild. The next build replaces these files and leaves all others alone."


def listing(paths: Iterable[str]) -> bytes:
    """The list's own text: a path a line, itself among them."""
    return "\n".join([HEAD, *sorted({*paths, NAME})]).encode() + b"\n"


def ours(folder: Path) -> frozenset[str]:
    """What an earlier build wrote into a folder; nothing where there is no list."""
    try:
        lines = (folder / NAME).read_text(encoding="utf-8").splitlines()
    except (FileNotFoundError, NotADirectoryError, UnicodeDecodeError):
        return frozenset()
    return frozenset(line for line in lines if not line.startswith("#") and safe(line))


def others(folder: Path) -> Iterator[str]:
    """The files and links in a folder that are not ours, and folders with nothing in them."""
    mine = ours(folder)
    for path in sorted(folder.rglob("*")):
        name = path.relative_to(folder).as_posix()
        if path.is_dir() and not path.is_symlink():
            if not any(path.iterdir()):
                yield name
        elif name not in mine:
            yield name
