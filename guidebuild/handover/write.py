"""Files onto a stick so that it can be pulled out at any moment: every file is the old one or the new one.

A file is written beside its place under another name, flushed, read back, compared, and only then renamed. The
list of what is coming is there first, the manifest last; a second run mends what the first did not finish.
"""

import hashlib
import os
from collections.abc import Callable, Mapping
from pathlib import Path

from guidebuild.handover.manifest import COMING, NAME, checksum, sums_in, write_manifest
from guidebuild.handover.tree import files_below

BESIDE = ".part"  # behind the name of a file that is being written
Progress = Callable[[int, int], None]


class WriteFailed(Exception):
    """A file could not be written or did not come back as it was written; the message names it and says why."""


def write_tree(root: Path, files: Mapping[str, bytes], progress: Progress | None = None) -> int:
    """Make `root` hold just these files and their manifest; the bytes written.

    Only what differs is copied. Files of an earlier writing that are not among these are taken away; files that
    no manifest of ours names are left alone. Raises WriteFailed; what stood there before is then still whole.
    """
    root.mkdir(parents=True, exist_ok=True)
    wanted = {path: hashlib.sha256(data).hexdigest() for path, data in files.items()}
    ours = _ours(root)
    todo = [
        path for path in sorted(files) if not _is_there(root / path, wanted[path], len(files[path]))
    ]
    total, done = sum(len(files[path]) for path in todo), 0
    if todo or ours.keys() != wanted.keys():
        _put(root / COMING, write_manifest(wanted))
    for path in todo:
        _put(root / path, files[path])
        done += len(files[path])
        if progress is not None:
            progress(done, total)
    for path in sorted(ours.keys() - wanted.keys()):
        _take_away(root, path)
    _put(root / NAME, write_manifest(wanted))
    (root / COMING).unlink(missing_ok=True)
    return done


def _ours(root: Path) -> dict[str, str]:
    """What this or an unfinished earlier writing put here."""
    sums: dict[str, str] = {}
    for name in (NAME, COMING):
        if (root / name).is_file():
            sums |= sums_in(root / name)[0]
    for path in files_below(root) if sums else ():
        if path.endswith(BESIDE):
            (root / path).unlink(missing_ok=True)
    return sums


def _is_there(path: Path, wanted: str, size: int) -> bool:
    try:
        return path.stat().st_size == size and checksum(path) == wanted
    except OSError:
        return False


def _put(path: Path, data: bytes) -> None:
    """Write beside, flush, read back, compare, rename, flush the folder."""
    beside = path.with_name(path.name + BESIDE)
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        with beside.open("wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        if beside.read_bytes() != data:
            raise WriteFailed(
                f"{path.name} did not come back as it was written: the medium may be bad"
            )
        beside.replace(path)
        _flush_folder(path.parent)
    except OSError as error:
        beside.unlink(missing_ok=True)
        raise WriteFailed(f"{path.name} could not be written: {error.strerror or error}") from error


def _flush_folder(folder: Path) -> None:
    """Make a rename last; systems that can't open a folder have no need of it."""
    try:
        handle = os.open(folder, os.O_RDONLY)
    except OSError:
        return
    try:
        os.fsync(handle)
    except OSError:
        pass
    finally:
        os.close(handle)


def _take_away(root: Path, path: str) -> None:
    (root / path).unlink(missing_ok=True)
    folder = (root / path).parent
    while folder != root:
        try:
            folder.rmdir()
        except OSError:
            return  # not empty, or not there
        folder = folder.parent
