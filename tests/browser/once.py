"""What all processes of a run need is made by the first that asks, and read by the others."""

import fcntl
from collections.abc import Callable
from pathlib import Path


def once(name: str, room: Path, make: Callable[[Path], None]) -> Path:
    """A folder that `make` has filled; the lock falls when its process ends, so nobody waits for the dead."""
    folder, done = room / name, room / f"{name}.done"
    with (room / f"{name}.lock").open("w", encoding="utf-8") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if not done.exists():
            folder.mkdir(exist_ok=True)
            make(folder)
            done.touch()
    return folder
