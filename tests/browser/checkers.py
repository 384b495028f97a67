"""Checkers that npm brings, pinned: `.ci/test` lays them into `.cache`, never a page's own file."""

import shutil
from pathlib import Path

import pytest

from tests.needs import ON_BUILD_SERVER

HOME = Path(__file__).resolve().parents[2] / ".cache" / "checkers" / "node_modules"
AXE = HOME / "axe-core" / "axe.min.js"
VNU = HOME / "vnu-jar" / "build" / "dist" / "vnu.jar"


def needs_checker(file: Path, *programs: str) -> pytest.MarkDecorator:
    """A mark: the test runs a checker that `sh .ci/test` installs."""
    there = file.is_file() and all(shutil.which(program) for program in programs)
    reason = f"{file.name} is not there: sh .ci/test brings it"
    return pytest.mark.skipif(not there and not ON_BUILD_SERVER, reason=reason)
