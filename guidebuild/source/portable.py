"""Names that every stick, every Windows and every copy tool keeps as they are.

Copy tools lose names silently on FAT (one takes `CON.html`, another lets torque.html replace Torque.html), so
names are checked before anything is written.

Source: Microsoft, "Naming Files, Paths, and Namespaces" (reserved characters and stems, trailing dot and
space); Microsoft's FAT32 specification (file size, entries in a folder). Lengths and depth are our own: people
copy the tree to a desktop, and a path has 256 characters there.
"""

import re
import unicodedata
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

LONGEST_PATH = 120  # characters
DEEPEST = 5  # folders
MOST_IN_FOLDER = 2000
LARGEST_FILE = 2**32 - 1  # bytes, of FAT32
EXCEPTIONS = frozenset({"START.html", "SHA256SUMS"})
_NAME = re.compile(r"[a-z0-9][a-z0-9._-]{0,63}")
_REFUSED = re.compile(r'[<>:"/\\|?*\x00-\x1f]')
_RESERVED = re.compile(r"(?:con|prn|aux|nul|com[1-9]|lpt[1-9])(?:\..*)?", re.IGNORECASE)


@dataclass(frozen=True, slots=True, order=True)
class BadName:
    """A path that would not arrive, and why."""

    path: str
    why: str


def bad_names(files: Mapping[str, int]) -> list[BadName]:
    """What is wrong with a tree of files (path with `/` -> bytes), sorted; empty where all will arrive."""
    found = {BadName(path, why) for path, size in files.items() for why in _one(path, size)}
    found |= set(_twins(files))
    found |= set(_crowded(files))
    return sorted(found)


def _one(path: str, size: int) -> Iterator[str]:
    if len(path) > LONGEST_PATH:
        yield f"the path has {len(path)} characters; at most {LONGEST_PATH} arrive everywhere"
    if path.count("/") > DEEPEST:
        yield f"it lies {path.count('/')} folders deep; at most {DEEPEST}"
    if size > LARGEST_FILE:
        yield f"it has {size} bytes; a FAT32 stick takes {LARGEST_FILE} at most"
    for name in path.split("/"):
        yield from bad_name(name)


def bad_name(name: str) -> Iterator[str]:
    """Why one name, without its folders, would not arrive."""
    if name in EXCEPTIONS:
        return
    refused = _REFUSED.search(name)
    if refused:
        yield f"`{name}` has the character {refused[0]!r}, which FAT refuses"
    elif _RESERVED.fullmatch(name):
        yield f"`{name}` is the name of a device on Windows"
    elif name != name.rstrip(". "):
        yield f"`{name}` ends in a dot or a space, which Windows takes away"
    elif _NAME.fullmatch(name) is None:
        yield f"`{name}` is not made of a-z, 0-9, dot, _ and - alone, 64 at most, a letter or figure first"
    elif "." in name.rpartition(".")[0]:
        yield f"`{name}` has more than one dot"


def _folded(path: str) -> str:
    return unicodedata.normalize("NFC", path).casefold()


def _twins(paths: Iterable[str]) -> Iterator[BadName]:
    """Names in one folder that FAT can't tell apart, and a file that has the name of a folder."""
    seen: dict[str, str] = {}
    for path in sorted(paths):
        parts = path.split("/")
        for length in range(1, len(parts) + 1):
            whole = "/".join(parts[:length]) + ("/" if length < len(parts) else "")
            other = seen.setdefault(_folded(whole.rstrip("/")), whole)
            if other != whole:
                why = f"a stick can't tell it from `{other.rstrip('/')}`"
                yield BadName(path, why)


def _crowded(paths: Iterable[str]) -> Iterator[BadName]:
    for folder, count in Counter(path.rpartition("/")[0] for path in paths).items():
        if count > MOST_IN_FOLDER:
            yield BadName(folder, f"the folder has {count} files; at most {MOST_IN_FOLDER}")
