"""The PATH of a command: what it may be, and the way to it from where the command was given."""

import os
from argparse import ArgumentParser
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from guidebuild.build.place import Asked

USUAL = "content"


def arguments(parser: ArgumentParser) -> None:
    """Add PATH, and how many processes may work on it."""
    parser.add_argument(
        "path", metavar="PATH", nargs="?", help="content folder, folder in it, or guide"
    )
    parser.add_argument(
        "--jobs", type=int, metavar="N", help="processes to use (usual: as many as there are cores)"
    )


def asked(path: str | None) -> "Asked":
    """The content folder, and what of it is meant."""
    from guidebuild.build.place import asked as find

    return find(Path(path if path is not None else USUAL if os.path.isdir(USUAL) else os.curdir))


def whole(path: str | None) -> "Asked":
    """The content folder, for a command that works on all of it."""
    from guidebuild.build.trouble import Trouble

    found = asked(path)
    if found.within:
        raise Trouble(f"{path} is a part of the content folder {found.root}; name the whole of it.")
    return found


def prefix(root: Path) -> str:
    """The way to the content folder with `/`, empty where one stands in it."""
    try:
        way = os.path.relpath(root).replace(os.sep, "/")
    except ValueError:  # another drive
        way = root.as_posix()
    return "" if way == os.curdir else way
