"""The content folder on the disk: what lies in it, and its texts, each read once."""

import os
from dataclasses import dataclass, field
from itertools import pairwise
from pathlib import Path
from posixpath import normpath

from guidebuild.read.faults import file_too_large, not_utf_8
from guidebuild.read.report import Report
from guidebuild.source.span import Span
from guidebuild.source.text import Source

LARGEST = 1_000_000  # bytes of a text file: some hundred times a long guide
LONGEST = 20_000  # characters of a line


@dataclass(slots=True)
class Folder:
    """`files`: all files, relative to the root, with `/`; what links lead to outside is not among them."""

    root: Path
    report: Report
    files: frozenset[str] = frozenset()
    leaving: frozenset[str] = frozenset()  # links whose target lies outside
    sources: dict[str, Source | None] = field(default_factory=dict)

    def source(self, path: str) -> Source | None:
        """The text of a file that exists; None (and told) where it can't be read as text."""
        if path not in self.sources:
            self.sources[path] = self._load(path)
        return self.sources[path]

    def leaves(self, path: str) -> bool:
        """Whether a path goes through a link that leads outside."""
        return any(path == link or path.startswith(link + "/") for link in self.leaving)

    def _load(self, path: str) -> Source | None:
        file = self.root / path
        try:
            size = file.stat().st_size
            data = file.read_bytes() if size <= LARGEST else b""
        except OSError:
            return None
        if size > LARGEST:
            self._too_large(path, "this file", f"{size} bytes", f"{LARGEST} bytes")
            return None
        return self._text(path, data)

    def _text(self, path: str, data: bytes) -> Source | None:
        try:
            text = data.decode("utf-8-sig")
        except UnicodeDecodeError as error:
            self._not_utf_8(path, data, error)
            return None
        source = Source(path, text)
        if len(text) > LONGEST and (long := _long_line(source)):
            shown = f"{long.end - long.start} characters"
            self.report.tell(file_too_large, long, what="this line", size=shown, limit=f"{LONGEST}")
            return None
        return source

    def _too_large(self, path: str, what: str, size: str, limit: str) -> None:
        nothing = Source(path, "")
        self.report.tell(file_too_large, Span(nothing, 0, 0), what=what, size=size, limit=limit)

    def _not_utf_8(self, path: str, data: bytes, error: UnicodeDecodeError) -> None:
        """Shown in the text as it would read with that byte replaced."""
        before = data[: error.start].decode("utf-8-sig", "replace")
        shown = Source(path, data.decode("utf-8-sig", "replace"))
        at = min(len(before), max(len(shown.text) - 1, 0))
        span = Span(shown, at, min(at + 1, len(shown.text)))
        self.report.tell(not_utf_8, span, byte=f"0x{data[error.start]:02X}", line=span.line)


def _long_line(source: Source) -> Span | None:
    starts = [*source.line_starts, len(source.text) + 1]
    for start, next_ in pairwise(starts):
        if next_ - start > LONGEST:
            return Span(source, start, next_ - 1)
    return None


def folder(root: Path, report: Report) -> Folder:
    """What lies under `root`. Links are followed only where they stay inside."""
    files: set[str] = set()
    leaving: set[str] = set()
    top = os.path.realpath(root) + os.sep
    waiting = [("", False)]  # folders, and whether a link led there: in it, no other is followed
    while waiting:
        below, linked = waiting.pop()
        for entry in _listing(root, below):
            path, link = f"{below}{entry.name}", entry.is_symlink()
            if link and not os.path.realpath(entry.path).startswith(top):
                leaving.add(path)
            elif entry.is_dir():
                if not (link and (linked or _goes_round(entry.path))):
                    waiting.append((path + "/", linked or link))
            elif entry.is_file():
                files.add(path)
    return Folder(root, report, frozenset(files), frozenset(leaving))


def guide_paths(found: Folder) -> list[str]:
    """The guides of a folder: `guides/<device>/<guide>.md`; all Markdown there but shared stages."""
    return [path for path in found.files if _is_text(path) and not _is_shared(path)]


def shared_paths(found: Folder) -> list[str]:
    """The shared stages of a folder, in order: what lies in a folder `shared`."""
    return sorted(path for path in found.files if _is_text(path) and _is_shared(path))


def misnamed_paths(found: Folder) -> list[str]:
    """Records, kits and settings with an ending that nobody reads, in order."""
    return sorted(path for path in found.files if path.endswith(".yml") and _is_ours(path))


def _is_text(path: str) -> bool:
    return path.startswith("guides/") and path.endswith(".md")


def _is_shared(path: str) -> bool:
    return "shared" in path.split("/")[1:-1]


def _is_ours(path: str) -> bool:
    return path.startswith(("devices/", "kits/")) or "/" not in path


def _goes_round(link: str) -> bool:
    """Whether a link leads to a folder that it lies in, however far up."""
    above = os.path.realpath(os.path.dirname(link)) + os.sep
    return above.startswith(os.path.realpath(link) + os.sep)


def _listing(root: Path, below: str) -> list["os.DirEntry[str]"]:
    try:
        with os.scandir(root / below) as entries:
            return [entry for entry in entries if not entry.name.startswith(".")]
    except OSError:
        return []


def inside(beside: str, path: str) -> str | None:
    """A path written in a file of the folder `beside`, relative to the content folder; None: it leaves it."""
    if path.startswith(("/", "\\")) or ":" in path or "\\" in path or "\0" in path:
        return None
    found = normpath(f"{beside}/{path}" if beside else path)
    return None if found == ".." or found.startswith("../") else found
