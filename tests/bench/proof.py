"""How long the proof takes: 1,024 configurations against one, 2**20 against one, and all against reading.

Run it: `python -m tests.bench.proof`. All figures are medians of CPU time in one run; only their ratios mean anything.
What the record settles is shared by its guides, so all but one figure are of the first guide of a record: of a
new object of it each time.
"""

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


def load(options: int, values: tuple[str, ...] = ("no", "yes")) -> tuple[Guide, Device, float]:
    """The guide, its device, and the seconds that reading both took."""
    with tempfile.TemporaryDirectory() as folder:
        write(Path(folder), options, values)
        begun = process_time()
        content, findings = read_content(Path(folder))
        seconds = process_time() - begun
    assert not findings, findings[0]
    (read,) = content.guides
    return read.guide, read.device, seconds


def timed(work: Callable[[], object]) -> float:
    """Seconds of one run."""
    begun = process_time()
    work()
    return process_time() - begun


def first(guide: Guide, device: Device) -> float:
    """Seconds of a proof of which nothing is known yet."""
    new = replace(device)
    return timed(lambda: prove(guide, new))


def ratios(rounds: int = 15) -> dict[str, float]:
    """All ratios. Runs are interleaved, so that a slow moment hits all alike."""
    reading = [load(10)[2] for _ in range(5)]
    one, many, most = load(10, ("yes",))[:2], load(10)[:2], load(20)[:2]
    assert prove(*one).configurations.total == 1
    assert prove(*many).configurations.total == 1024
    seconds: dict[str, list[float]] = {"one": [], "many": [], "next": [], "most": []}
    for number in range(rounds):
        seconds["one"].append(first(*one))
        seconds["many"].append(first(*many))
        prove(*many)
        seconds["next"].append(timed(lambda: prove(*many)))
        if number % 5 == 0:
            seconds["most"].append(first(*most))
    middle = {name: median(times) for name, times in seconds.items()}
    print({name: f"{value * 1000:.1f} ms" for name, value in middle.items()})
    print(f"reading {median(reading) * 1000:.0f} ms")
    return {
        "1,024 / one": middle["many"] / middle["one"],
        "1,024 / reading": middle["many"] / median(reading),
        "1,024, next guide of the record / reading": middle["next"] / median(reading),
        "2**20 / one": middle["most"] / middle["one"],
    }


if __name__ == "__main__":
    told(ratios(), LIMITS)
