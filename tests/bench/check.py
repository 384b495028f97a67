"""What a check costs: cold against parsing alone, unchanged and after one edited line against cold, and starting up.

Run it: `python -m tests.bench.check [GUIDES]` (usual: 500 of 40 steps). CPU seconds of whole processes in one run; only
their ratios mean anything.
"""

import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path
from statistics import median

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
    "one line edited / cold": 0.05,
    "two cores / one, by the clock": 0.65,
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


def _snapshot(folder: Path) -> dict[str, str]:
    """The code as it is now, so that an edit of it on the way spoils no figure (a cache trusts no other code).

    What Python compiles is kept, as on a user's machine, whatever our own shell says.
    """
    code = folder / "code"
    for name in ("guidebuild", "schema", "themes"):
        shutil.copytree(ROOT / name, code / name)
    ours = {"GUIDEBUILD_CACHE": f"{folder}/cache", "PYTHONPATH": str(code), "PWD": str(code)}
    return {**os.environ, **ours, "PYTHONDONTWRITEBYTECODE": ""}


def ratios(guides: int, rounds: int = 3) -> dict[str, float]:
    """All ratios; of each figure the median of a few runs."""
    with tempfile.TemporaryDirectory() as folder:
        content = Path(folder) / "content"
        content.mkdir()
        write(content, guides)
        env = _snapshot(Path(folder))
        python = sys.executable
        check = (python, "-m", "guidebuild", "check", str(content))
        fresh = (*check, "--no-cache")
        parsing = median(cpu(python, "-c", PARSE, str(content), env=env) for _ in range(rounds))
        cold = median(cpu(*fresh, "--jobs=1", env=env) for _ in range(rounds))
        alone = median(clock(*fresh, "--jobs=1", env=env) for _ in range(rounds))
        shared = median(clock(*fresh, "--jobs=2", env=env) for _ in range(rounds))
        cpu(*check, env=env)
        unchanged = median(cpu(*check, env=env) for _ in range(rounds))
        edited = []
        for number in range(rounds):
            path = content / "guides" / "rack-0" / f"change-{number}.md"
            path.write_text(path.read_text().replace("dry cloth", "clean dry cloth", 1))
            edited.append(cpu(*check, env=env))
        bare = median(cpu(python, "-c", BARE, env=env) for _ in range(15))
        help_ = median(cpu(python, "-m", "guidebuild", "--help", env=env) for _ in range(15))
    print(f"parsing {parsing:.2f} s, cold {cold:.2f} s, unchanged {unchanged:.2f} s, CPU")
    return {
        "cold / parsing": cold / parsing,
        "unchanged / cold": unchanged / cold,
        "one line edited / cold": median(edited) / cold,
        "two cores / one, by the clock": shared / alone,
        "help / bare argparse": help_ / bare,
    }


if __name__ == "__main__":
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 500
    for name, ratio in ratios(count).items():
        print(f"{name}: {ratio:.3f} (at most {LIMITS[name]})")
