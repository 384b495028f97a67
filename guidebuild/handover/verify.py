"""Whether a stick still holds what was written on it: each changed, missing or added file by name."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from enum import Enum
from pathlib import Path

from guidebuild.handover.manifest import COMING, NAME, checksum, sums_in
from guidebuild.handover.tree import files_below, links_below

Progress = Callable[[int, int], None]  # bytes done, bytes in all


class Trouble(Enum):
    """What may be wrong with a file."""

    CHANGED = "changed"
    MISSING = "missing"
    ADDED = "added"
    UNREADABLE = "can't be read"
    LINK = "is a link"
    MANIFEST = "manifest"
    NEWER = "from a newer writing that was not finished"


@dataclass(frozen=True, slots=True, order=True)
class Difference:
    """One file that is not as the manifest says; `line` only of the manifest itself."""

    path: str
    trouble: str
    line: int = 0


def verify(root: Path, progress: Progress | None = None) -> tuple[int, list[Difference]]:
    """How many files are as they were written, and every one that is not, sorted.

    Raises OSError where the folder itself can't be read. A stick without a manifest gives that one finding.
    """
    manifest = root / NAME
    if not manifest.is_file():
        return 0, [Difference(NAME, Trouble.MISSING.value)]
    sums, bad = sums_in(manifest)
    coming, _ = sums_in(root / COMING) if (root / COMING).is_file() else ({}, [])
    there = {path: size for path, size in files_below(root).items() if path not in (NAME, COMING)}
    found = [Difference(NAME, Trouble.MANIFEST.value, line) for line in bad]
    found += [Difference(path, Trouble.LINK.value) for path in links_below(root)]
    found += [Difference(path, Trouble.MISSING.value) for path in sums if path not in there]
    real = _sums(root, there, progress)
    good = 0
    for path, real_sum in real.items():
        if real_sum is None:
            found.append(Difference(path, Trouble.UNREADABLE.value))
        elif sums.get(path) == real_sum:
            good += 1
        elif coming.get(path) == real_sum:
            found.append(Difference(path, Trouble.NEWER.value))
        else:
            found.append(
                Difference(path, (Trouble.CHANGED if path in sums else Trouble.ADDED).value)
            )
    return good, sorted(set(found))


def _sums(root: Path, files: dict[str, int], progress: Progress | None) -> dict[str, str | None]:
    """Checksums of all files, two at a time: the hash leaves the other core free, the disk sets the pace."""

    def one(path: str) -> str | None:
        try:
            return None if (root / path).is_symlink() else checksum(root / path)
        except OSError:
            return None

    done, total = 0, sum(files.values())
    found: dict[str, str | None] = {}
    with ThreadPoolExecutor(2) as pool:
        for path, value in zip(files, pool.map(one, files), strict=True):
            found[path] = value
            done += files[path]
            if progress is not None:
                progress(done, total)
    return found
