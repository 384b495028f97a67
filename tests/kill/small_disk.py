"""A disk of our own in memory that can be made too small: the file system itself says that it is full.

`python -m tests.kill.small_disk [STEPS]`; needs leave to mount, and is no part of the tests where there is none.
"""

import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

from tests.kill.forms import Form, forms, prepared
from tests.kill.scene import Scene, laid, ran, tree

LARGE = "256m"


def mounted(place: Path) -> bool:
    """Whether a disk in memory is there now."""
    return _mount("-t", "tmpfs", "-o", f"size={LARGE}", "tmpfs", str(place))


def _mount(*words: str) -> bool:
    return (
        shutil.which("mount") is not None
        and not subprocess.run(["mount", *words], capture_output=True).returncode
    )


def resize(place: Path, size: str) -> bool:
    """Larger or smaller, as long as it takes what is on it."""
    return _mount("-o", f"remount,size={size}", str(place))


@contextmanager
def small_disk() -> Iterator[Path | None]:
    """A folder that is a disk of its own, None where we may not make one."""
    with tempfile.TemporaryDirectory() as folder:
        if not mounted(Path(folder)):
            yield None
            return
        try:
            yield Path(folder)
        finally:
            subprocess.run(["umount", folder], check=True)


def run_out(form: Form, scene: Scene, disk: Path, steps: int) -> int:
    """The disk a little larger from time to time, until all goes well; how often it was full."""
    full = 0
    needed = sum(map(len, form.after.values())) * 2 + 2**20
    for step in range(steps + 1):
        used = shutil.disk_usage(disk).used
        assert resize(disk, str(used + needed * step // steps // 4096 * 4096 + 4096))
        code = ran(form.words(scene.new))
        assert code in (0, 2), code
        full += code == 2
        assert resize(disk, LARGE)
        form.check(form)
        form.mend(scene)
        form.reset(scene)
    return full


def main(steps: int) -> int:
    """Every form in turn."""
    with tempfile.TemporaryDirectory() as room, small_disk() as disk:
        if disk is None:
            print("no leave to mount: see `python -m tests.kill` for errors at every write")
            return 0
        scene = replace(laid(Path(room)), room=disk)
        authors = tree(scene.old), tree(scene.new)
        for form in forms(scene):
            prepared(form, scene)
            full = run_out(form, scene, disk, steps)
            print(f"{form.name}: {full} of {steps + 1} times full; left: {form.notes}", flush=True)
            assert (tree(scene.old), tree(scene.new)) == authors
    return 0


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]) if len(sys.argv) > 1 else 20))
