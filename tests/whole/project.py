"""Whole projects on the disk, and the commands run on them as a person runs them."""

import os
import shutil
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

PROJECTS = Path(__file__).parent / "projects"


@dataclass(frozen=True, slots=True)
class Said:
    """What a command said and how it ended."""

    code: int
    out: str
    err: str


def guidebuild(*words: str, cwd: Path, **env: str) -> Said:
    """Run the command in a folder; a traceback is never an answer."""
    command = [sys.executable, "-m", "guidebuild", *words]
    environment = {**os.environ, "PYTHONPATH": str(PROJECTS.parents[2]), "COLUMNS": "80", **env}
    done = subprocess.run(
        command, cwd=cwd, env=environment, capture_output=True, text=True, timeout=120, check=False
    )
    assert "Traceback" not in done.stderr + done.stdout
    return Said(done.returncode, done.stdout, done.stderr)


def copy(name: str, to: Path) -> Path:
    """A project of `projects/` copied to where it may be changed."""
    return Path(shutil.copytree(PROJECTS / name, to / name))


def change(file: Path, old: str, new: str) -> None:
    """Change one place of a file; it must be there."""
    text = file.read_text(encoding="utf-8")
    assert text.count(old) == 1, f"{old!r} stands {text.count(old)} times in {file.name}"
    file.write_text(text.replace(old, new), encoding="utf-8")
