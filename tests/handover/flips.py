"""`python -m tests.handover.flips [COUNT]`: a packed demo damaged in one place at a time; each must be told by name.

GNU sha256sum judges each as well where it can (it knows nothing of a file that was added), and the general library
`bagit`, in full validation, at every tenth of a bag.
"""

import os
import random
import subprocess
import sys
import tempfile
from collections import Counter
from collections.abc import Callable
from pathlib import Path

from guidebuild.build.pack import Wish, pack
from guidebuild.handover.manifest import NAME
from guidebuild.handover.verify import Difference, Trouble, verify

CONTENT = Path(__file__).resolve().parents[2] / "content"
Dice = random.Random


def flip(path: Path, dice: Dice) -> str:
    """One bit the other way round."""
    hurt = bytearray(path.read_bytes())
    hurt[dice.randrange(len(hurt))] ^= 1 << dice.randrange(8)
    path.write_bytes(bytes(hurt))
    return Trouble.CHANGED.value


def delete(path: Path, dice: Dice) -> str:
    """The file is gone."""
    path.unlink()
    return Trouble.MISSING.value


def truncate(path: Path, dice: Dice) -> str:
    """Cut short, perhaps to nothing."""
    os.truncate(path, dice.randrange(path.stat().st_size))
    return Trouble.CHANGED.value


def lengthen(path: Path, dice: Dice) -> str:
    """A few bytes more at its end."""
    with path.open("ab") as file:
        file.write(dice.randbytes(dice.randrange(1, 9)))
    return Trouble.CHANGED.value


def swap(path: Path, dice: Dice) -> str:
    """Another file's bytes under its name."""
    others = [one for one in path.parent.iterdir() if one.is_file() and one != path]
    path.write_bytes(dice.choice(others).read_bytes() if others else b"")
    return Trouble.CHANGED.value


HURTS: tuple[Callable[[Path, Dice], str], ...] = (flip, delete, truncate, lengthen, swap)


def files_of(root: Path) -> list[Path]:
    """What may be hurt: all that has something in it, but the list of checksums itself."""
    every = sorted(path for path in root.rglob("*") if path.is_file() and path.stat().st_size)
    return [path for path in every if path.name != NAME]


def hurt_once(root: Path, path: Path, hurt: Callable[[Path, Dice], str], dice: Dice) -> bool:
    """Whether `verify` told just this, and sha256sum agreed; afterwards the file is sound again."""
    sound, name = path.read_bytes(), path.relative_to(root).as_posix()
    what = hurt(path, dice)
    if path.exists() and path.read_bytes() == sound:  # two files with the same bytes
        return True
    ours, theirs = verify(root)[1] == [Difference(name, what)], sha256sum(root)
    path.write_bytes(sound)
    return ours and len(theirs) == 1 and theirs[0].startswith(f"{name}: FAILED")


def sha256sum(root: Path) -> list[str]:
    """What the general program finds wrong."""
    command = ["sha256sum", "-c", "--quiet", NAME]
    done = subprocess.run(command, cwd=root, capture_output=True, text=True, errors="replace")
    return done.stdout.splitlines()


def added_once(root: Path, dice: Dice) -> bool:
    """Whether `verify` told a file that nobody wrote, in a folder that was there or in one of its own."""
    folder = dice.choice([root, *(path for path in root.rglob("*") if path.is_dir())])
    own = folder / f"new-{dice.randrange(10**6)}"
    path = dice.choice([folder, own]) / dice.choice(
        ["a.html", "autorun.inf", "Ä b.txt", ".x", "x.part"]
    )
    path.parent.mkdir(exist_ok=True)
    path.write_bytes(dice.randbytes(dice.randrange(9)))
    found = verify(root)[1]
    path.unlink()
    if own.exists():
        own.rmdir()
    return found == [Difference(path.relative_to(root).as_posix(), Trouble.ADDED.value)]


def hurt(root: Path, counts: dict[str, int], seed: int = 7) -> Counter[str]:
    """Hurt it so many times in each way (by name), one at a time; how often it was told, and told alone."""
    dice, told, files = random.Random(seed), Counter[str](), files_of(root)
    for way in HURTS:
        for _ in range(counts.get(way.__name__, 0)):
            told[way.__name__] += hurt_once(root, dice.choice(files), way, dice)
    for _ in range(counts.get("add", 0)):
        told["add"] += added_once(root, dice)
    assert verify(root)[1] == []
    return told


def hurt_in_a_bag(root: Path, count: int, seed: int = 7) -> int:
    """The same of a bag, judged by the library alone: how many it told."""
    import bagit

    dice, told = random.Random(seed), 0
    files = files_of(root / "data")
    for number in range(count):
        path = dice.choice(files)
        sound = path.read_bytes()
        HURTS[number % 4](path, dice)
        told += not bagit.Bag(str(root)).is_valid()
        path.write_bytes(sound)
    assert bagit.Bag(str(root)).is_valid()
    return told


if __name__ == "__main__":
    many = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
    some = max(1, many // 5)
    counts = {"flip": many} | dict.fromkeys(("delete", "truncate", "lengthen", "swap", "add"), some)
    os.environ.setdefault("SOURCE_DATE_EPOCH", "1767225600")
    with tempfile.TemporaryDirectory() as room:
        stick, bag = Path(room, "stick"), Path(room, "bag")
        pack(CONTENT, Wish(stick, number="TS-01"))
        pack(CONTENT, Wish(bag, form="bag", number="TS-01"))
        told = hurt(stick, counts)
        for name, count in counts.items():
            print(f"{name}: {told[name]} of {count} told by verify and by sha256sum", flush=True)
        print(f"bag: {hurt_in_a_bag(bag, some)} of {some} told by bagit")
    sys.exit(told != counts)
