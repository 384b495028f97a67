"""Checkers that npm brings, pinned: `.ci/test` lays them into `.cache`, never a page's own file."""

import shutil
import subprocess
from pathlib import Path

import pytest

from tests.needs import ON_BUILD_SERVER

HOME = Path(__file__).resolve().parents[2] / ".cache" / "checkers" / "node_modules"
AXE = HOME / "axe-core" / "axe.min.js"
VNU = HOME / "vnu-jar" / "build" / "dist" / "vnu.jar"

# Current CSS that the pinned checker does not know: container queries (CSS Containment 3), `vector-effect` (SVG 2)
_NEWER = ("“@container", "Property “container", "Property “vector-effect”")


def errors_in(*files: Path) -> list[str]:
    """What the Nu checker calls an error in pages and style sheets."""
    command = ["java", "-jar", str(VNU), "--format", "gnu", "--also-check-css"]
    told = subprocess.run([*command, *map(str, files)], capture_output=True, text=True, check=False)
    assert told.returncode in (0, 1), told.stderr
    errors = [line for line in told.stderr.splitlines() if ": error: " in line]
    return [line for line in errors if not any(newer in line for newer in _NEWER)]


def needs_checker(file: Path, *programs: str) -> pytest.MarkDecorator:
    """A mark: the test runs a checker that `sh .ci/test` installs."""
    there = file.is_file() and all(shutil.which(program) for program in programs)
    reason = f"{file.name} is not there: sh .ci/test brings it"
    return pytest.mark.skipif(not there and not ON_BUILD_SERVER, reason=reason)
