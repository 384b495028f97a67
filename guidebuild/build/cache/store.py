"""One file for a content folder, in the user's cache folder: whole and sound, or as good as not there."""

import os
import pickle
import sys
import time
from collections.abc import Iterator
from contextlib import suppress
from hashlib import blake2b
from pathlib import Path
from typing import Any

from guidebuild.build.guarded import Guarded
from guidebuild.build.whole_file import beside

MAGIC = b"guidebuild cache 1\n"
SIZE = 32  # bytes of a checksum
OLD = 60 * 24 * 3600  # seconds after which a folder's unused file goes


def folder() -> Path:
    """Where caches lie on this system; GUIDEBUILD_CACHE names another place."""
    if told := os.environ.get("GUIDEBUILD_CACHE"):
        return Path(told)
    home = Path.home()
    if sys.platform == "win32":
        return Path(os.environ.get("LOCALAPPDATA", home)) / "guidebuild" / "cache"
    if sys.platform == "darwin":
        return home / "Library" / "Caches" / "guidebuild"
    return Path(os.environ.get("XDG_CACHE_HOME") or home / ".cache") / "guidebuild"


def file_of(root: Path) -> Path:
    """The file for a content folder."""
    name = blake2b(str(root.resolve()).encode("utf-8", "surrogateescape"), digest_size=16)
    return folder() / f"{name.hexdigest()}.cache"


def load(file: Path) -> dict[str, Any]:
    """What the file holds; nothing where it is missing, damaged, or of another kind."""
    with suppress(Exception):  # whatever is wrong with it, the check goes on without
        data = file.read_bytes()
        start = len(MAGIC) + SIZE
        payload = data[start:]
        if data[:start] == MAGIC + _checksum(payload):
            held = Guarded(payload).load()  # built-in values only
            return held if isinstance(held, dict) else {}
    return {}


def save(file: Path, held: dict[str, Any]) -> None:
    """Write it beside and put it in place: of two runs at once the later one's stands, whole.

    A place that can't be written is no mistake: the next check is as slow as this one.
    """
    payload = pickle.dumps(held, protocol=5)
    with suppress(OSError):
        file.parent.mkdir(parents=True, exist_ok=True)
        with beside(file, f"{file.name}.{os.getpid()}") as written:
            written.write_bytes(MAGIC + _checksum(payload) + payload)
        for other in _unused(file.parent):
            other.unlink(missing_ok=True)


def _checksum(payload: bytes) -> bytes:
    return blake2b(payload, digest_size=SIZE).digest()


def _unused(place: Path) -> Iterator[Path]:
    """Caches of folders that nobody checked for a long time."""
    now = time.time()
    for each in place.glob("*.cache*"):
        if now - each.stat().st_mtime > OLD:
            yield each
