"""How fast `verify` is against GNU sha256sum on the same files in the same run.

Run it: `python -m tests.bench.verify`. Runs are interleaved; the ratio of the medians is what counts.
"""

import os
import subprocess
import tempfile
from pathlib import Path
from statistics import median
from time import perf_counter

from guidebuild.handover.manifest import NAME
from guidebuild.handover.verify import verify
from guidebuild.handover.write import write_tree

LIMIT = 0.8  # of the speed of sha256sum
_SIZES = (2_000, 40_000, 400_000, 6_000_000)


def ratio(rounds: int = 7) -> float:
    """Speed of `verify` as a part of that of `sha256sum -c`; above 1 it is the faster."""
    with tempfile.TemporaryDirectory() as folder:
        root = Path(folder)
        files = {f"f{n:03}.bin": os.urandom(_SIZES[n % len(_SIZES)]) for n in range(160)}
        write_tree(root, files)
        ours: list[float] = []
        theirs: list[float] = []
        for _ in range(rounds):
            begun = perf_counter()
            assert verify(root)[1] == []
            ours.append(perf_counter() - begun)
            begun = perf_counter()
            command = ["sha256sum", "-c", "--quiet", NAME]
            subprocess.run(command, cwd=root, check=True)
            theirs.append(perf_counter() - begun)
    print(f"verify {median(ours):.3f} s, sha256sum {median(theirs):.3f} s")
    return median(theirs) / median(ours)


if __name__ == "__main__":
    print(f"verify / sha256sum: {ratio():.2f} of its speed (at least {LIMIT})")
