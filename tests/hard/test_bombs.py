"""Files that would blow up: each is read to an end with 20 s and 512 MiB at most."""

import subprocess
import sys

import pytest

from tests.hard.bombs import BOMBS


@pytest.mark.skipif(sys.platform != "linux", reason="limits of Linux")
@pytest.mark.parametrize("name", BOMBS)
def test_a_bomb_does_not_go_off(name: str) -> None:
    command = [sys.executable, "-m", "tests.hard.bombs", name]
    ran = subprocess.run(command, capture_output=True, text=True, check=False)
    assert ran.returncode == 0, ran.stderr[-1500:] or f"ended by signal {-ran.returncode}"
