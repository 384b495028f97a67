"""A disk that fails at the n-th thing that is done to it, or that is full after so many bytes of a file."""

import errno
import os
import resource
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

_CHANGES = frozenset(
    [
        "os.rename",
        "os.mkdir",
        "os.remove",
        "os.rmdir",
        "os.link",
        "os.symlink",
        "os.truncate",
        "os.chmod",
        "shutil.copymode",
    ]
)


def failing_at(place: Path, at: int, for_good: bool) -> Callable[[], None]:
    """From the `at`-th change at a place the disk is full: once, or `for_good`, so that clearing up fails as well.

    An audit hook (PEP 578) is asked before each such call of the interpreter, whoever makes it.
    """
    near, count = str(place), 0

    def hook(event: str, args: tuple[Any, ...]) -> None:
        nonlocal count
        if not (_writes(args) if event == "open" else event in _CHANGES):
            return
        if not str(args[0]).startswith(near):
            return
        count += 1
        if count == at or (for_good and count > at):
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC), str(args[0]))

    return lambda: sys.addaudithook(hook)


def _writes(args: tuple[Any, ...]) -> bool:
    flags = args[2]
    return isinstance(flags, int) and bool(flags & (os.O_WRONLY | os.O_RDWR | os.O_CREAT))


def full_after(size: int) -> Callable[[], None]:
    """No file may grow beyond so many bytes: a write is then cut short, in the middle of a file."""
    return lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (size, size))
