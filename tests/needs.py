"""What a test needs of the machine: absent, it is skipped with a plain word; on a build server it fails."""

import importlib
import os
import shutil
from pathlib import Path
from types import ModuleType

import pytest

ON_BUILD_SERVER = os.environ.get("CI") == "true"
SHARED = Path(__file__).resolve().parents[2] / "shared" / "data"


def program(name: str) -> pytest.MarkDecorator:
    """A mark: the test runs a program of the machine."""
    absent = shutil.which(name) is None and not ON_BUILD_SERVER
    return pytest.mark.skipif(absent, reason=f"the program {name} is not installed")


def shared(name: str) -> pytest.MarkDecorator:
    """A mark: the test reads data that others wrote and that lies beside the project, never in it."""
    absent = not (SHARED / name).is_dir()
    return pytest.mark.skipif(absent, reason=f"the data {name} do not lie beside the project")


def library(name: str) -> ModuleType:
    """A reference library, imported; the test is skipped, or fails, where it is not there."""
    if ON_BUILD_SERVER:
        return importlib.import_module(name)
    module: ModuleType = pytest.importorskip(name)
    return module
