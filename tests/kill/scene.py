"""Two forms of a content folder, and what each of them makes: so that old, new and broken can be told apart."""

import multiprocessing
import os
import shutil
import time
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path

CONTENT = Path(__file__).resolve().parents[2] / "content"
RECORD, OLD, NEW = "devices/larch-p2/device.yaml", "near the cell.", "near the bare cell."
DAY = "1767225600"  # a page that says the day must be the same one tomorrow
Tree = Mapping[str, bytes]


@dataclass(frozen=True)
class Scene:
    """`old` and `new` are content folders beside each other in `room`."""

    room: Path
    old: Path
    new: Path


def laid(room: Path) -> Scene:
    """The demo's smaller device in one language, before and after a caution was reworded."""
    without = shutil.ignore_patterns("translations", "brindle*", "replace-the-print-head.md")
    for name in ("old", "new"):
        root = Path(shutil.copytree(CONTENT, room / name, ignore=without))
        settings = root / "guidebuild.yaml"
        said = settings.read_text(encoding="utf-8")
        settings.write_text(said.replace("[en, de, ar]", "[en]"), encoding="utf-8")
    record = room / "new" / RECORD
    said = record.read_text(encoding="utf-8")
    assert OLD in said
    record.write_text(said.replace(OLD, NEW), encoding="utf-8")
    return Scene(room, room / "old", room / "new")


def tree(root: Path) -> Tree:
    """Every file below a folder: path -> bytes."""
    return {
        path.relative_to(root).as_posix(): path.read_bytes()
        for path in root.rglob("*")
        if path.is_file()
    }


def child(words: list[str], first: Callable[[], None] = lambda: None) -> multiprocessing.Process:
    """The command in a process of its own, forked so that what is slow to load is there; `first` runs in it."""
    process = multiprocessing.get_context("fork").Process(target=_command, args=(words, first))
    process.start()
    return process


def warm(root: Path) -> None:
    """Load here what a child would load each time anew."""
    from guidebuild.build import make, pack  # noqa: F401
    from guidebuild.build.site_files import site_files

    assert site_files(root).files


def ran(words: list[str], first: Callable[[], None] = lambda: None) -> int:
    """The command run to its end: its exit code."""
    process = child(words, first)
    process.join()
    assert process.exitcode is not None
    return process.exitcode


def _command(words: list[str], first: Callable[[], None]) -> None:
    from guidebuild.cli.main import main

    os.environ["SOURCE_DATE_EPOCH"] = DAY
    silent = os.open(os.devnull, os.O_WRONLY)
    os.dup2(silent, 1)
    os.dup2(silent, 2)
    first()
    os._exit(main(words))


def lasted(words: list[str], begun: Callable[[], bool]) -> float:
    """Seconds from the first write to the end of the command, undisturbed."""
    process = child(words)
    while process.is_alive() and not begun():
        time.sleep(0.0002)
    start = time.monotonic()
    process.join()
    return time.monotonic() - start


def killed(words: list[str], begun: Callable[[], bool], wait: float) -> bool:
    """Kill the command `wait` seconds after it began to write; whether it was still at work."""
    process = child(words)
    while process.is_alive() and not begun():
        time.sleep(0.0002)
    time.sleep(wait)
    process.kill()
    process.join()
    return process.exitcode == -9
