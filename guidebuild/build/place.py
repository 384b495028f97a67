"""What a PATH on the command line means: the content folder, and which part of it."""

from dataclasses import dataclass
from pathlib import Path

from guidebuild.build.trouble import Trouble

SETTINGS = "guidebuild.yaml"
ROOMS = ("guides", "devices")


@dataclass(frozen=True, slots=True)
class Asked:
    """`root`: the content folder. `within`: what of it was asked for, as a content path; empty for all."""

    root: Path
    within: str

    def covers(self, path: str) -> bool:
        """Whether a content path is, or lies in, what was asked for."""
        return not self.within or path == self.within or path.startswith(f"{self.within}/")


def asked(path: Path) -> Asked:
    """The content folder that a path is or lies in; Trouble where there is none."""
    if not path.exists():
        raise Trouble(f"There is no file or folder {path}.")
    whole = path.resolve()
    for folder in (whole, *whole.parents):
        if _is_content(folder):
            within = whole.relative_to(folder).as_posix()
            return Asked(folder, "" if within == "." else within)
    raise Trouble(
        f"{path} is no content folder and lies in none. A content folder has a file {SETTINGS}, "
        "or the folders `guides` and `devices`."
    )


def _is_content(folder: Path) -> bool:
    return (folder / SETTINGS).is_file() or all((folder / room).is_dir() for room in ROOMS)
