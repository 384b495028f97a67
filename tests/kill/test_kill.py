"""Killed, out of disk, in the middle of a file: old or new is whole, and one more run mends it.

A sample; `python -m tests.kill` does 200 kills and every change of the disk.
"""

import sys
from dataclasses import replace

import pytest

from tests.kill.forms import Form, forms, prepared
from tests.kill.scene import Scene, laid
from tests.kill.small_disk import run_out, small_disk
from tests.kill.trials import fill, kill, starve

pytestmark = pytest.mark.skipif(sys.platform != "linux", reason="signals and limits of Linux")


@pytest.fixture(scope="module")
def scene(tmp_path_factory: pytest.TempPathFactory) -> Scene:
    return laid(tmp_path_factory.mktemp("kill"))


@pytest.fixture(scope="module", params=["site", "folder", "stick", "bag", "zip"])
def form(scene: Scene, request: pytest.FixtureRequest) -> Form:
    return prepared(next(one for one in forms(scene) if one.name == request.param), scene)


def test_killed(form: Form, scene: Scene) -> None:
    assert kill(form, scene, 6) > 0


def test_an_error_at_a_write(form: Form, scene: Scene) -> None:
    assert starve(form, scene, step=37) >= 2


def test_full_in_the_middle_of_a_file(form: Form, scene: Scene) -> None:
    assert fill(form, scene, 2) > 0


def test_a_disk_that_is_too_small(scene: Scene) -> None:
    with small_disk() as disk:
        if disk is None:
            pytest.skip("no leave to mount a disk in memory")
        site = forms(replace(scene, room=disk))[0]
        assert run_out(prepared(site, scene), scene, disk, 3) > 0
