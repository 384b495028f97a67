"""Guides shared out over processes, and what they found put together again in the guides' order."""

import os
import signal
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from guidebuild.build.batch import Batch
from guidebuild.build.run import run

if TYPE_CHECKING:
    from concurrent.futures import ProcessPoolExecutor

ENOUGH = 12  # guides; with fewer a second process costs more than it gains
PIECES = 4  # a process, so that one slow guide does not leave the others idle

Progress = Callable[[int, int], None]  # done, of how many


def run_all(
    root: Path, paths: Sequence[str], rest: bool, jobs: int | None, progress: Progress
) -> Batch:
    """All these guides, in as many processes as it pays to use."""
    jobs = jobs or cores()
    if jobs < 2 or len(paths) < ENOUGH:
        return run(root, paths, _counter(progress, len(paths)), rest=rest)
    pieces = [*_pieces(paths, jobs * PIECES), *([[]] if rest else [])]
    whole, done = Batch(), 0
    with _pool(jobs) as pool:
        with _ctrl_c_later():  # the processes start here
            batches = pool.map(partial(_piece, root), pieces)
        for piece, batch in zip(pieces, batches, strict=True):
            whole.add(batch)
            done += len(piece)
            progress(done, len(paths))
    return whole


def cores() -> int:
    """The cores that we may use."""
    try:
        return len(os.sched_getaffinity(0))
    except AttributeError:  # not on this system
        return os.cpu_count() or 1


def _piece(root: Path, paths: Sequence[str]) -> Batch:
    """One piece; the empty one is what no guide draws on."""
    return run(root, paths, lambda _: None, rest=not paths)


def _counter(progress: Progress, total: int) -> Callable[[int], None]:
    done = 0

    def count(more: int) -> None:
        nonlocal done
        done += more
        progress(done, total)

    return count


def _pieces(paths: Sequence[str], count: int) -> list[Sequence[str]]:
    """The paths in about `count` runs: neighbours share a device, whose record is then read once."""
    size = -(-len(paths) // count)
    return [paths[start : start + size] for start in range(0, len(paths), size)]


@contextmanager
def _ctrl_c_later() -> Iterator[None]:
    """A process that is born within never hears Ctrl-C, not even before it can be told to ignore it."""
    if not hasattr(signal, "pthread_sigmask"):  # not on this system
        yield
        return
    before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, before)


@contextmanager
def _pool(jobs: int) -> Iterator["ProcessPoolExecutor"]:
    """Processes that leave Ctrl-C to us and end with us; one that is killed is told, not waited for."""
    from concurrent.futures import ProcessPoolExecutor  # slow to load, and one process needs none
    from multiprocessing import active_children, get_all_start_methods, get_context

    method = "fork" if "fork" in get_all_start_methods() else "spawn"
    leave_it = (signal.SIGINT, signal.SIG_IGN)
    pool = ProcessPoolExecutor(jobs, get_context(method), signal.signal, leave_it)
    try:
        yield pool
    except BaseException:
        for process in active_children():
            process.terminate()
        raise
    finally:
        pool.shutdown(cancel_futures=True)
