"""`python -m tests.handover.flips [COUNT]`: single bits of a packed demo flipped; each must be told by name.

GNU sha256sum judges each as well, and the general library `bagit`, in full validation, at every tenth of a bag.
"""

import os
import random
import subprocess
import sys
import tempfile
from pathlib import Path

from guidebuild.build.pack import Wish, pack
from guidebuild.handover.manifest import NAME
from guidebuild.handover.verify import verify

CONTENT = Path(__file__).resolve().parents[2] / "content"


def flipped(root: Path, count: int, seed: int = 7) -> int:
    """Flip so many bits, one at a time; how many were told, and told alone."""
    dice, told = random.Random(seed), 0
    files = sorted(
        p for p in root.rglob("*") if p.is_file() and p.stat().st_size and p.name != NAME
    )
    for _ in range(count):
        path = dice.choice(files)
        sound = path.read_bytes()
        hurt = bytearray(sound)
        hurt[dice.randrange(len(hurt))] ^= 1 << dice.randrange(8)
        path.write_bytes(bytes(hurt))
        name = path.relative_to(root).as_posix()
        theirs = subprocess.run(["sha256sum", "-c", "--quiet", NAME], cwd=root, capture_output=True)
        agreed = theirs.returncode == 1 and f"{name}: FAILED" in theirs.stdout.decode()
        told += [one.path for one in verify(root)[1]] == [name] and agreed
        path.write_bytes(sound)
    return told


def flipped_in_a_bag(root: Path, count: int, seed: int = 7) -> int:
    """The same of a bag, judged by the library alone."""
    import bagit

    dice, told = random.Random(seed), 0
    files = sorted(path for path in (root / "data").rglob("*") if path.is_file())
    for _ in range(count):
        path = dice.choice(files)
        sound = path.read_bytes()
        hurt = bytearray(sound)
        hurt[dice.randrange(len(hurt))] ^= 1 << dice.randrange(8)
        path.write_bytes(bytes(hurt))
        told += not bagit.Bag(str(root)).is_valid()
        path.write_bytes(sound)
    assert bagit.Bag(str(root)).is_valid()
    return told


if __name__ == "__main__":
    many = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
    os.environ.setdefault("SOURCE_DATE_EPOCH", "1767225600")
    with tempfile.TemporaryDirectory() as room:
        stick, bag = Path(room, "stick"), Path(room, "bag")
        pack(CONTENT, Wish(stick, number="TS-01"))
        pack(CONTENT, Wish(bag, form="bag", number="TS-01"))
        print(f"{flipped(stick, many)} of {many} flipped bits told by verify and by sha256sum")
        print(f"{flipped_in_a_bag(bag, many // 10)} of {many // 10} told by bagit")
