"""What a folder of thousands of guides costs in parts: memory of the largest run, CPU seconds a guide, three sizes.

Run it: `python -m tests.bench.many [GUIDES] [GUIDES-A-PART] [STEPS] [check|build...]` (usual: 5000, 250, 40, both). A
tenth, a third and all of them are checked in parts and joined, built in parts and joined; every command is a process of
its own, with one job. The cost is linear where CPU seconds a guide are the same in all sizes.
"""

import os
import subprocess
import sys
import tempfile
import time
from dataclasses import dataclass
from pathlib import Path

from tests.bench.many_guides import write

ROOT = Path(__file__).resolve().parents[2]
LIMIT = 1024  # MiB, of one run
LINEAR = 1.25  # times as much a guide at the full size as at a tenth of it, at most


@dataclass
class Cost:
    """CPU seconds of all runs, and the highest memory of one, in MiB."""

    cpu: float = 0.0
    memory: float = 0.0

    def run(self, *words: str, cwd: Path) -> None:
        """A command with its cost added."""
        environment = {**os.environ, "GUIDEBUILD_CACHE": os.devnull, "PYTHONPATH": str(ROOT)}
        process = subprocess.Popen(
            [sys.executable, "-m", "guidebuild", *words],
            cwd=cwd, env=environment, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
        )  # fmt: skip
        _, status, usage = os.wait4(process.pid, 0)
        process.returncode = os.waitstatus_to_exitcode(status)
        assert process.returncode == 0, words
        self.cpu += usage.ru_utime + usage.ru_stime
        self.memory = max(self.memory, usage.ru_maxrss / 1024)


def in_parts(room: Path, command: str, parts: int) -> tuple[Cost, Cost]:
    """Of the parts, and of joining them."""
    made, joined = Cost(), Cost()
    names = [f"{command}-{number}" for number in range(1, parts + 1)]
    for number, name in enumerate(names, 1):
        words = ("--part", f"{number}/{parts}", "--out", name, "--jobs", "1")
        made.run(command, "content", *words, cwd=room)
    out = ["--out", "site"] if command == "build" else ["--report", "json=whole.json"]
    joined.run("join", *names, *out, cwd=room)
    return made, joined


def measured(guides: int, a_part: int, steps: int, commands: list[str]) -> dict[str, Cost]:
    """A folder of so many guides, checked and built."""
    found: dict[str, Cost] = {}
    with tempfile.TemporaryDirectory() as folder:
        room, parts = Path(folder), -(-guides // a_part)
        (room / "content").mkdir()
        write(room / "content", guides, steps)
        for command in commands:
            start = time.monotonic()
            made, joined = in_parts(room, command, parts)
            found |= {command: made, f"{command}, joined": joined}
            print(
                f"{guides} guides, {parts} parts, {command}: {time.monotonic() - start:.0f} s",
                flush=True,
            )
            for name, cost in ((command, made), ("join", joined)):
                each = f"{1000 * cost.cpu / guides:.1f} ms of CPU a guide"
                print(f"  {name}: {each}, {cost.memory:.0f} MiB at most", flush=True)
    return found


def main(commands: list[str], guides: int, a_part: int, steps: int) -> int:
    """All three sizes; the exit code says whether the limits hold."""
    sizes = (guides // 10, guides // 3, guides)
    costs = [measured(size, a_part, steps, commands) for size in sizes]
    memory = max(cost.memory for of_size in costs for cost in of_size.values())
    print(f"memory of one run: {memory:.0f} MiB (at most {LIMIT})")
    sound = memory <= LIMIT
    for name in costs[0]:
        first, last = (costs[at][name].cpu / sizes[at] for at in (0, -1))
        print(
            f"{name}: {last / first:.2f} times as much a guide at {sizes[-1]} as at {sizes[0]} (at most {LINEAR})"
        )
        sound &= last / first <= LINEAR
    return not sound


if __name__ == "__main__":
    counts = [int(word) for word in sys.argv[1:] if word.isdigit()]
    named = [word for word in sys.argv[1:] if not word.isdigit()]
    sys.exit(main(named or ["check", "build"], *(counts + [5000, 250, 40][len(counts) :])))
