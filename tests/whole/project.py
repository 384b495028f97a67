"""Whole projects on the disk, and the commands run on them as a person runs them."""

import os
import shutil
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from pathlib import Path

PROJECTS = Path(__file__).parent / "projects"
CACHE = tempfile.TemporaryDirectory(
    prefix="guidebuild-tests-"
)  # not the caches of whoever runs the tests


@dataclass(frozen=True, slots=True)
class Said:
    """What a command said and how it ended."""

    code: int
    out: str
    err: str


def environment(**more: str) -> dict[str, str]:
    """What a command of the tests runs in."""
    ours = {"PYTHONPATH": str(PROJECTS.parents[2]), "COLUMNS": "80", "GUIDEBUILD_CACHE": CACHE.name}
    return {**os.environ, **ours, **more}


def guidebuild(*words: str, cwd: Path, **env: str) -> Said:
    """Run the command in a folder; a traceback is never an answer."""
    command = [sys.executable, "-m", "guidebuild", *words]
    done = subprocess.run(
        command,
        cwd=cwd,
        env=environment(**env),
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
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
