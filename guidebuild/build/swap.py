"""A site put in place as a whole: written beside, then swapped in, so that no half of one ever stands."""

import os
import shutil
from collections.abc import Collection, Mapping
from contextlib import suppress
from itertools import chain
from pathlib import Path

from guidebuild.build.listing import NAME, listing, others
from guidebuild.build.trouble import Trouble

NEW, OLD = ".guidebuild-new", ".guidebuild-old"


def put(files: Mapping[str, bytes], out: Path, same: Collection[str] = ()) -> tuple[str, ...]:
    """Make `out` hold these files and whatever of others' it held; returns the names of the others'.

    `same`: files of ours that stay as they are in `out`.

    Trouble where a file that is not ours would be replaced, or where we may not write.
    """
    out = Path(os.path.realpath(out))
    new, old = out.with_name(out.name + NEW), out.with_name(out.name + OLD)
    try:
        _mend(out, new, old)
        kept = _kept({*files, *same}, out)
        _write(files, new, same)
        _bring((*same, *kept), out, new)
        _swap(out, new, old)
    except OSError as error:
        raise Trouble(f"Can't write {error.filename or out}: {error.strerror}.") from error
    finally:
        with suppress(OSError):  # a disk that takes nothing any more: the next build puts it back
            _put_back(out, old)
        shutil.rmtree(new, ignore_errors=True)
    shutil.rmtree(old, ignore_errors=True)
    return kept


def mended(out: Path) -> None:
    """Bring the old site back where a build was cut off between two renames, and clear up beside it.

    Trouble where we may not.
    """
    out = Path(os.path.realpath(out))
    try:
        _mend(out, out.with_name(out.name + NEW), out.with_name(out.name + OLD))
    except OSError as error:
        raise Trouble(f"Can't write {error.filename or out}: {error.strerror}.") from error


def _mend(out: Path, new: Path, old: Path) -> None:
    """Clear up after a build that was cut off (power, kill)."""
    _put_back(out, old)
    if new.exists():
        shutil.rmtree(new)
    if old.exists():
        shutil.rmtree(old)


def _put_back(out: Path, old: Path) -> None:
    """Between the two renames the old site stands aside: bring it back if the new one did not come."""
    if old.exists() and not out.exists():
        old.rename(out)


def _kept(files: Collection[str], out: Path) -> tuple[str, ...]:
    """What in `out` is not ours; Trouble where it is in our way."""
    if not out.exists():
        return ()
    if not out.is_dir():
        raise Trouble(f"{out} is a file. Name a folder for the site.")
    kept = tuple(others(out))
    folders = {parent.as_posix() for name in files for parent in Path(name).parents}
    for name in kept:
        if name in files or name == NAME or (name in folders and not (out / name).is_dir()):
            raise Trouble(
                f"{out / name} was not written by guidebuild and would be replaced. "
                "Name another folder for the site, or move that file away."
            )
    return kept


def _write(files: Mapping[str, bytes], new: Path, same: Collection[str]) -> None:
    """All files into the new folder, one by one in memory; the list names also what comes from the old one."""
    new.mkdir(parents=True)
    for name, data in chain(files.items(), [(NAME, listing({*files, *same}))]):
        path = new / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)


def _bring(kept: tuple[str, ...], out: Path, new: Path) -> None:
    """Files that stay into the new folder too: linked where the disk can, copied where it can't."""
    for name in kept:
        source, target = out / name, new / name
        if source.is_dir() and not source.is_symlink():
            target.mkdir(parents=True, exist_ok=True)
            continue
        target.parent.mkdir(parents=True, exist_ok=True)
        try:
            os.link(source, target, follow_symlinks=False)
        except (OSError, NotImplementedError):
            shutil.copy2(source, target, follow_symlinks=False)


def _swap(out: Path, new: Path, old: Path) -> None:
    """Two renames; a stop between them is mended by `_put_back`, here or in the next build."""
    if out.exists():
        with suppress(FileNotFoundError):
            shutil.copymode(out, new)
        out.rename(old)
    new.rename(out)
