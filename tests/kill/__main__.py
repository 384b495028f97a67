"""`python -m tests.kill [TIMES] [FORM]`: killed at random moments, an error at each change of the disk, a full disk."""

import sys
import tempfile
import time
from pathlib import Path

from tests.kill.forms import forms, prepared
from tests.kill.scene import laid
from tests.kill.trials import fill, kill, starve

if __name__ == "__main__":
    times = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    with tempfile.TemporaryDirectory() as room:
        scene = laid(Path(room))
        for form in forms(scene):
            if sys.argv[2:] and form.name not in sys.argv[2:]:
                continue
            prepared(form, scene)
            start = time.monotonic()
            hit = kill(form, scene, times)
            print(f"{form.name}: {times} kills, {hit} at work; left: {form.notes}", flush=True)
            print(f"{form.name}: {starve(form, scene)} errors at a change of the disk", flush=True)
            print(f"{form.name}: {fill(form, scene, times // 5)} times full in a file", flush=True)
            print(f"{form.name}: {time.monotonic() - start:.0f} s", flush=True)
