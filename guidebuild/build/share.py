"""Guides shared out over processes, and what they found put together again in the guides' order."""

import os
import signal
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from functools import partial
from multiprocessing import get_all_start_methods, get_context
from multiprocessing.pool import Pool
from pathlib import Path

from guidebuild.build.batch import Batch, run

ENOUGH = 12  # guides; with fewer a second process costs more than it gains
PIECES = 4  # a process, so that one slow guide does not leave the others idle

Progress = Callable[[int, int], None]  # done, of how many


def run_all(root: Path, paths: Sequence[str], jobs: int | None, progress: Progress) -> list[Batch]:
    """All guides at these content paths, in as many processes as it pays to use."""
    jobs = min(jobs or len(os.sched_getaffinity(0)), max(len(paths) // (ENOUGH // 2), 1))
    pieces = _pieces(paths, jobs * PIECES if jobs > 1 else 1)
    if len(pieces) == 1:
        return [run(root, paths, _counter(progress, len(paths)))]
    batches, done = [], 0
    with _pool(jobs) as pool:
        for piece, batch in zip(pieces, pool.imap(partial(_piece, root), pieces), strict=True):
            batches.append(batch)
            done += len(piece)
            progress(done, len(paths))
    return batches


def _piece(root: Path, paths: Sequence[str]) -> Batch:
    return run(root, paths, lambda _: None)


def _counter(progress: Progress, total: int) -> Callable[[int], None]:
    done = 0

    def count(more: int) -> None:
        nonlocal done
        done += more
        progress(done, total)

    return count


def _pieces(paths: Sequence[str], count: int) -> list[Sequence[str]]:
    """The paths in about `count` runs: neighbours share a device, whose record is then read once."""
    size = max(1, -(-len(paths) // count))
    return [paths[start : start + size] for start in range(0, len(paths), size)] or [paths]


@contextmanager
def _pool(jobs: int) -> Iterator[Pool]:
    """Processes that leave Ctrl-C to us and end with us."""
    method = "fork" if "fork" in get_all_start_methods() else "spawn"
    pool = get_context(method).Pool(jobs, signal.signal, (signal.SIGINT, signal.SIG_IGN))
    try:
        yield pool
    finally:
        pool.terminate()
        pool.join()
