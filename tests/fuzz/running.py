"""A reader fed with many inputs, in a process that may not take more memory or time than is told."""

import resource
import time
import traceback
from multiprocessing.connection import Connection
from typing import Any

from hypothesis import HealthCheck, Phase, given, settings

from tests.fuzz.readers import Reader, readers

MEMORY = 512 * 2**20  # bytes that a reader's process may have in use at its highest
SLOWEST = 10.0  # seconds for one input: more is a hang


def fed(reader: Reader, count: int, seeded: bool = False) -> tuple[int, float]:
    """Feed `count` inputs; how many it took, and the slowest in seconds. What falls over is raised, cut down."""
    taken, slowest = 0, 0.0

    @settings(
        max_examples=count,
        deadline=None,
        derandomize=seeded,
        database=None,
        phases=[Phase.generate, Phase.shrink],
        suppress_health_check=list(HealthCheck),
    )
    @given(reader.given)
    def feed(one: Any) -> None:
        nonlocal taken, slowest
        start = time.process_time()
        reader.read(one)
        taken, slowest = taken + 1, max(slowest, time.process_time() - start)

    feed()
    return taken, slowest


def highest() -> int:
    """The most memory that this process ever had in use, in bytes."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * 1024


def one(name: str, count: int, out: Connection) -> None:
    """One reader in a process of its own; sends what came of it: taken, slowest, highest, what fell over."""
    reader = next(each for each in readers() if each.name == name)
    fell = ""
    taken, slowest = 0, 0.0
    try:
        taken, slowest = fed(reader, count)
    except Exception:
        fell = traceback.format_exc()
    out.send((taken, slowest, highest(), fell))
