"""What a check depends on, as digests: the tool, the content's own words, the folders of a device, a guide's files."""

import os
import re
import sys
from collections.abc import Iterable, Iterator
from functools import cache
from hashlib import blake2b
from importlib import import_module
from importlib.util import find_spec
from pathlib import Path

import guidebuild
from guidebuild.build.rulebook import ROOMS
from guidebuild.shipped import shipped

WORLD = ("guidebuild.yaml", "tools.yaml", "terms.yaml")
LARGE = 1_000_000  # bytes: a larger file is a picture or a film, told by size and time
LIBRARIES = ("markdown_it", "yaml", "jsonschema", "PIL")
BASED_ON = re.compile(rb"""^["']?based-on["']?\s*:\s*["']?([a-z0-9-]+)""", re.MULTILINE)


def digest(*parts: bytes | str) -> bytes:
    """A digest of parts, each with its length so that none runs into the next."""
    found = blake2b(digest_size=16)
    for part in parts:
        data = part.encode("utf-8", "surrogatepass") if isinstance(part, str) else part
        found.update(len(data).to_bytes(8, "big"))
        found.update(data)
    return found.digest()


@cache
def tool() -> bytes:
    """This guidebuild: its files and schemas, the libraries it reads with, and the Python that runs it."""
    rooms = (Path(place) for room in ROOMS for place in import_module(room).__path__)
    folders = dict.fromkeys((Path(guidebuild.__file__).parent, shipped("schema"), *rooms))
    told = [sys.version, *stamps(*folders)]
    for library in LIBRARIES:
        spec = find_spec(library)
        told.append(_stamp(Path(spec.origin)) if spec and spec.origin else library)
    return digest(*told)


def stamps(*folders: Path) -> Iterator[str]:
    """Names, sizes and times of all files in folders of our own."""
    return (_stamp(path) for path in _files(*folders))


def _files(*folders: Path) -> Iterable[Path]:
    for folder in folders:
        for below, names, files in os.walk(folder):
            names[:] = sorted(name for name in names if name != "__pycache__")
            yield from (Path(below, name) for name in sorted(files))


def _stamp(path: Path) -> str:
    stat = path.stat()
    return f"{path.name} {stat.st_size} {stat.st_mtime_ns}"


class Digests:
    """Digests of one content folder; each file is read at most once."""

    def __init__(self, root: Path, files: frozenset[str]) -> None:
        self.root = root
        self.files = sorted(files)
        self._top = os.path.join(root, "")
        self._contents: dict[str, bytes] = {}
        self._known_models: dict[str, frozenset[str]] = {}
        self._folders: dict[str, bytes] = {}
        self._below: dict[str, list[str]] = {}
        for path in self.files:
            self._below.setdefault("/".join(path.split("/")[:2]), []).append(path)
        names = (
            path for path in self.files if path.endswith("/device.yaml") or path[:5] == "kits/"
        )
        rest = [path for path in self.files if path in WORLD or path.startswith("translations/")]
        self.world = digest(tool(), *names, "", *map(self.content, rest))

    def content(self, path: str) -> bytes:
        """A file by its name and content; a large one by size and time; one that is not there as such."""
        if path not in self._contents:
            self._contents[path] = digest(path, self._told(path))
        return self._contents[path]

    def _told(self, path: str) -> bytes:
        try:
            with open(self._top + path, "rb", buffering=0) as file:
                stat = os.fstat(file.fileno())
                if stat.st_size > LARGE:
                    return f"{stat.st_size} {stat.st_mtime_ns}".encode()
                return file.readall()
        except OSError:
            return b"not there"

    def folder(self, name: str) -> bytes:
        """`guides/<device>` or `devices/<device>`: all names in it, and all content but that of guides."""
        if name not in self._folders:
            paths = self._below.get(name, [])
            told = (path if path.endswith(".md") else self.content(path) for path in paths)
            self._folders[name] = digest(name, *told)
        return self._folders[name]

    def guide(self, path: str, files: Iterable[str]) -> bytes:
        """A guide by all that its check looked at."""
        folders = {"/".join(path.split("/")[:2])}
        for file in files:
            if file.startswith("devices/"):
                folders |= self._models("/".join(file.split("/")[:2]))
        told = (*map(self.folder, sorted(folders)), *map(self.content, files))
        return digest(self.world, path, *told)

    def _models(self, folder: str) -> frozenset[str]:
        """A device's folder, and those of the records that it is based on."""
        if folder not in self._known_models:
            self._known_models[folder] = frozenset(self._chain(folder))
        return self._known_models[folder]

    def _chain(self, folder: str) -> set[str]:
        found: set[str] = set()
        while folder not in found:
            found.add(folder)
            try:
                based = BASED_ON.search((self.root / folder / "device.yaml").read_bytes())
            except OSError:
                break
            folder = f"devices/{based[1].decode()}" if based else folder
        return found

    def rest(self) -> bytes:
        """All that is no guide."""
        shared = (path for path in self.files if path.endswith(".md") and path.count("/") != 2)
        folders = map(self.folder, sorted(self._below))
        return digest(self.world, *folders, *map(self.content, shared))
