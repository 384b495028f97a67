"""What a check costs: cold against parsing alone, unchanged and after one edited line against cold, and starting up.

Run it: `python -m tests.bench.check [GUIDES]` (usual: 500 of 40 steps). CPU seconds of whole processes in one run; only
their ratios mean anything.
"""

import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Callable
from itertools import count
from pathlib import Path
from re import sub
from statistics import median

from tests.bench.limits import told
from tests.bench.many_guides import write

ROOT = Path(__file__).resolve().parents[2]
PARSE = """
import re, sys
from pathlib import Path
import yaml
from markdown_it import MarkdownIt
markdown = MarkdownIt("commonmark")
for path in sorted(Path(sys.argv[1]).rglob("*.*")):
    text = path.read_text(encoding="utf-8")
    if path.suffix == ".yaml":
        yaml.load(text, yaml.CSafeLoader)
        continue
    _, front, body = text.split("---\\n", 2)
    yaml.load(front, yaml.CSafeLoader)
    for token in markdown.parse(body):
        if token.type == "fence":
            yaml.load(token.content, yaml.CSafeLoader)
"""
BARE = "import argparse; argparse.ArgumentParser().parse_args()"
LIMITS = {
    "cold / parsing": 1.5,
    "unchanged / cold": 0.05,
    "one line edited, without the one guide / cold": 0.05,
    "two cores / one, by the clock": 0.65,
    "two cores / one, CPU": 1.15,
    "help / bare argparse": 3.0,
}


def cpu(*command: str, env: dict[str, str]) -> float:
    """User and system seconds of a process and its children."""
    before = os.times()
    subprocess.run(command, env=env, cwd=env["PWD"], check=True, stdout=subprocess.DEVNULL)
    after = os.times()
    return (after.children_user - before.children_user) + (
        after.children_system - before.children_system
    )


def clock(*command: str, env: dict[str, str]) -> float:
    """Seconds by the clock."""
    before = os.times().elapsed
    subprocess.run(command, env=env, cwd=env["PWD"], check=True, stdout=subprocess.DEVNULL)
    return os.times().elapsed - before


def snapshot(folder: Path) -> dict[str, str]:
    """The code as it is now, so that an edit of it on the way spoils no figure (a cache trusts no other code).

    What Python compiles is kept, as on a user's machine, whatever our own shell says.
    """
    code = folder / "code"
    for name in ("guidebuild", "schema", "themes"):
        shutil.copytree(ROOT / name, code / name)
    ours = {"GUIDEBUILD_CACHE": f"{folder}/cache", "PYTHONPATH": str(code), "PWD": str(code)}
    return {**os.environ, **ours, "PYTHONDONTWRITEBYTECODE": ""}


def ratios(guides: int, rounds: int = 3) -> dict[str, float]:
    """All ratios; of each figure the median of a few runs, which take turns so that a slow moment hits all alike."""
    with tempfile.TemporaryDirectory() as folder:
        content = Path(folder) / "content"
        content.mkdir()
        write(content, guides)
        env = snapshot(Path(folder))
        seconds = _of_cold(content, env, rounds) | _of_warm(content, env, rounds) | _of_start(env)
    print(", ".join(f"{name} {value:.2f} s" for name, value in seconds.items()))
    cold = seconds["cold"]
    return {
        "cold / parsing": cold / seconds["parsing"],
        "unchanged / cold": seconds["unchanged"] / cold,
        "one line edited, without the one guide / cold": (seconds["edited"] - seconds["one guide"])
        / cold,
        "two cores / one, by the clock": seconds["clock of two"] / seconds["clock of one"],
        "two cores / one, CPU": seconds["cold on two"] / cold,
        "help / bare argparse": seconds["help"] / seconds["bare"],
    }


def _medians(rounds: int, **measured: Callable[[], float]) -> dict[str, float]:
    found: dict[str, list[float]] = {name: [] for name in measured}
    for _ in range(rounds):
        for name, measure in measured.items():
            found[name].append(measure())
    return {name.replace("_", " "): median(times) for name, times in found.items()}


def _of_cold(content: Path, env: dict[str, str], rounds: int) -> dict[str, float]:
    python = sys.executable
    fresh = (python, "-m", "guidebuild", "check", str(content), "--no-cache")
    cpu(*fresh, env=env)  # Python compiles its files
    return _medians(
        rounds,
        parsing=lambda: cpu(python, "-c", PARSE, str(content), env=env),
        cold=lambda: cpu(*fresh, "--jobs=1", env=env),
        cold_on_two=lambda: cpu(*fresh, "--jobs=2", env=env),
        clock_of_one=lambda: clock(*fresh, "--jobs=1", env=env),
        clock_of_two=lambda: clock(*fresh, "--jobs=2", env=env),
    )


def _of_warm(content: Path, env: dict[str, str], rounds: int) -> dict[str, float]:
    check = (sys.executable, "-m", "guidebuild", "check", str(content))
    path = content / "guides" / "rack-0" / "change-1.md"
    turns = count()

    def edited() -> float:
        new = f"dry, clean cloth {next(turns)}"
        path.write_text(sub(r"dry(?:, clean)? cloth(?: \d+)?", new, path.read_text(), count=1))
        return cpu(*check, env=env)

    cpu(*check, env=env)
    return _medians(
        max(rounds, 5),
        unchanged=lambda: cpu(*check, env=env),
        edited=edited,
        one_guide=lambda: cpu(*check[:-1], str(path), "--no-cache", env=env),
    )


def _of_start(env: dict[str, str]) -> dict[str, float]:
    python = sys.executable
    return _medians(
        15,
        bare=lambda: cpu(python, "-c", BARE, env=env),
        help=lambda: cpu(python, "-m", "guidebuild", "--help", env=env),
    )


if __name__ == "__main__":
    told(ratios(int(sys.argv[1]) if len(sys.argv) > 1 else 500), LIMITS)
