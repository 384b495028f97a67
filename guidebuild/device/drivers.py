"""Which driver goes into which screw: by what its words say, else by the standards of its head.

Source: the product standards in `data/fasteners.csv`. The driver goes by the head's standard, never by the
thread alone, and old and new standards differ.
"""

import re
from collections.abc import Iterable

from guidebuild.device.screw import Screw
from guidebuild.device.standards import rows_for
from guidebuild.device.vocabulary import next_word

_SIZED = re.compile(r"([A-Za-z-]+?)\s*(\d.*)?")
_TAKES = {
    "TX": {"TR"},
    "hex": {"hex-pin"},
    "PH": {"PH"},
}  # a driver with a hole fits a recess without a pin


def drive_meant(text: str) -> str | None:
    """The normal form of a drive that a tool list names: `Torx 8` is `TX8`; None where it is none."""
    found = next_word(text.strip())
    if found is None or found[0].means != "drive" or found[1] != len(text.strip()):
        return None
    return found[0].value


def family(drive: str) -> str:
    """The drive without its size: `TX8` is `TX`."""
    found = _SIZED.fullmatch(drive)
    return found[1] if found else drive


def _size(drive: str) -> str:
    found = _SIZED.fullmatch(drive)
    return (found[2] or "").partition("x")[0] if found else ""


def fits(driver: str, drive: str) -> bool:
    """Whether a driver (in normal form) turns a screw of this drive; an untold size fits any."""
    if family(driver) != family(drive) and family(driver) not in _TAKES.get(family(drive), ()):
        return False
    return not _size(driver) or not _size(drive) or _size(driver) == _size(drive)


def any_fits(drivers: Iterable[str], drive: str) -> bool:
    """Whether one of several drivers does."""
    return any(fits(driver, drive) for driver in drivers)


def by_standards(screw: Screw) -> dict[str, tuple[str, ...]]:
    """Each driver that some standard gives a screw of this head and thread, with those standards.

    Where the words name a kind of drive without a size (`pan PH`), only drivers of that kind.
    """
    found: dict[str, tuple[str, ...]] = {}
    for row in rows_for(screw):
        if screw.drive is None or family(row.drive) == family(screw.drive):
            known = found.get(row.drive, ())
            found[row.drive] = known if row.standard in known else (*known, row.standard)
    return found


def says_size(screw: Screw) -> bool:
    """Whether the words name the driver outright."""
    return screw.drive is not None and bool(_size(screw.drive))
