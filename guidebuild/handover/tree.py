"""The files below a folder, by their path with `/`; links are not followed and not taken."""

import os
from collections.abc import Iterator
from pathlib import Path

# What systems leave on a stick by themselves; not ours and no sign of damage.
OF_THE_SYSTEM = frozenset(
    {
        "System Volume Information",
        "$RECYCLE.BIN",
        ".Trashes",
        ".Spotlight-V100",
        ".fseventsd",
        ".Trash-1000",
    }
)
_FILES_OF_THE_SYSTEM = frozenset({".DS_Store", "Thumbs.db", "desktop.ini", ".metadata_never_index"})


def files_below(root: Path) -> dict[str, int]:
    """Path -> size in bytes, sorted."""
    return dict(sorted(_walk(root, "")))


def _walk(folder: Path, prefix: str) -> Iterator[tuple[str, int]]:
    with os.scandir(folder) as entries:
        for entry in entries:
            if entry.is_dir(follow_symlinks=False):
                if entry.name not in OF_THE_SYSTEM:
                    yield from _walk(Path(entry.path), f"{prefix}{entry.name}/")
            elif entry.name not in _FILES_OF_THE_SYSTEM and not entry.name.startswith("._"):
                yield f"{prefix}{entry.name}", entry.stat(follow_symlinks=False).st_size


def links_below(root: Path) -> list[str]:
    """Every symbolic link below a folder: none belongs on a stick."""
    found = []
    for folder, folders, files in os.walk(root):
        for name in (*folders, *files):
            path = Path(folder, name)
            if path.is_symlink():
                found.append(path.relative_to(root).as_posix())
    return sorted(found)
