"""How long the proof takes: 1,024 configurations against one, 2**20 against one, and all against reading.

Run it: `python -m tests.bench.proof`. All figures are medians of CPU time in one run; only their ratios mean anything.
What the record settles is shared by its guides, so that the next guide of a record is quicker proved than the first.
Against reading both are held in new processes: what was read before in one is read again in no time.
"""

import subprocess
import sys
import tempfile
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from statistics import median
from time import process_time

from guidebuild.device.record import Device
from guidebuild.guide.guide import Guide
from guidebuild.proof.prove import prove
from guidebuild.read.content import read_content
from tests.bench.limits import told
from tests.bench.long_guide import write

LIMITS = {
    "1,024 / one": 1.5,
    "1,024 / reading": 0.05,
    "1,024, next guide of the record / reading": 0.05,
    "2**20 / one": 100.0,
}
ROOT = Path(__file__).resolve().parents[2]


def load(options: int, values: tuple[str, ...] = ("no", "yes")) -> tuple[Guide, Device]:
    """The guide and its device."""
    with tempfile.TemporaryDirectory() as folder:
        write(Path(folder), options, values)
        return _read(Path(folder))


def _read(folder: Path) -> tuple[Guide, Device]:
    content, findings = read_content(folder)
    assert not findings, findings[0]
    (read,) = content.guides
    return read.guide, read.device


def timed(work: Callable[[], object]) -> float:
    """Seconds of one run."""
    begun = process_time()
    work()
    return process_time() - begun


def first(guide: Guide, device: Device) -> float:
    """Seconds of a proof of which nothing is known yet."""
    new = replace(device)
    return timed(lambda: prove(guide, new))


def alone(folder: Path) -> None:
    """In this process for the first time: print the seconds of reading, of the proof, and of the next one."""
    begun = process_time()
    guide, device = _read(folder)
    reading = process_time() - begun
    print(reading, timed(lambda: prove(guide, device)), timed(lambda: prove(guide, device)))


def in_new_processes(rounds: int) -> tuple[float, ...]:
    """The medians of reading, first proof and next proof."""
    with tempfile.TemporaryDirectory() as folder:
        write(Path(folder), 10)
        code = "import sys, pathlib, tests.bench.proof as bench; bench.alone(pathlib.Path(sys.argv[1]))"
        command = [sys.executable, "-c", code, folder]
        runs = [
            subprocess.run(command, cwd=ROOT, check=True, capture_output=True, text=True).stdout
            for _ in range(rounds)
        ]
    return tuple(map(median, zip(*(map(float, one.split()) for one in runs), strict=True)))


def ratios(rounds: int = 15) -> dict[str, float]:
    """All ratios. Runs are interleaved, so that a slow moment hits all alike."""
    one, many, most = load(10, ("yes",)), load(10), load(20)
    assert prove(*one).configurations.total == 1
    assert prove(*many).configurations.total == 1024
    seconds: dict[str, list[float]] = {"one": [], "many": [], "most": []}
    for number in range(rounds):
        seconds["one"].append(first(*one))
        seconds["many"].append(first(*many))
        if number % 5 == 0:
            seconds["most"].append(first(*most))
    middle = {name: median(times) for name, times in seconds.items()}
    reading, proof, next_ = in_new_processes(rounds)
    middle |= {"reading, new process": reading, "proof there": proof, "next proof there": next_}
    print(", ".join(f"{name} {value * 1000:.1f} ms" for name, value in middle.items()))
    return {
        "1,024 / one": middle["many"] / middle["one"],
        "1,024 / reading": proof / reading,
        "1,024, next guide of the record / reading": next_ / reading,
        "2**20 / one": middle["most"] / middle["one"],
    }


if __name__ == "__main__":
    told(ratios(), LIMITS)
