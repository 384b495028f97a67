"""Product standards of screws: which head they describe, which drivers fit, how large the head is.

The driver goes by the *head's standard*, never by the thread alone: M2 pan is PH0 by ISO 7045 and PH1 by
DIN 7985 and in Japan. Source of each row in `data/fasteners.csv`.
"""

import re
from dataclasses import dataclass
from decimal import Decimal
from functools import cache

from guidebuild.device.screw import Screw
from guidebuild.device.tables import rows

_STANDARD = re.compile(
    r"(?:[^\W\d][\w\s-]*?\s)??((?:DIN\s|BS\s)?(?:EN\s)?(?:ISO|DIN|JIS\s?B|ASME\s?B))\s?(\d+(?:\.\d+)*(?:-\d)?)"
    r"(?:\s*[-–:,]\s*|\s+)(?=(?:M|S|ST|#|No|\d)\s?\d)",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class HeadRow:
    """One row of the table: what a standard says of one thread. Sizes in mm, greatest values."""

    standard: str
    heads: tuple[str, ...]
    thread: str
    drive: str
    diameter: Decimal | None
    height: Decimal | None
    source: str
    note: str


@cache
def head_rows() -> tuple[HeadRow, ...]:
    """The whole table."""
    return tuple(
        HeadRow(
            row["standard"],
            tuple(row["head"].split("|")),
            row["thread"],
            row["drive"],
            Decimal(row["head_diameter_mm"]) if row["head_diameter_mm"] else None,
            Decimal(row["head_height_mm"]) if row["head_height_mm"] else None,
            row["source"],
            row["note"],
        )
        for row in rows("fasteners")
    )


def split_standard(text: str) -> tuple[str | None, str]:
    """A product standard before the thread (`ISO 7046-2 M5 x 20`), and the text after it."""
    found = _STANDARD.match(text)
    if found is None:
        return None, text
    body = "ISO" if "ISO" in found[1].upper() else re.sub(r"\s*B$", " B", found[1].upper())
    joint = "" if body == "ASME B" else " "
    return f"{body}{joint}{found[2]}", text[found.end() :]


def same_standard(row: HeadRow, standard: str) -> bool:
    """Whether a row is of this standard; a part (`ISO 7046-2`) is of its whole (`ISO 7046`)."""
    return row.standard == standard or (
        standard.startswith(row.standard + "-") and not row.standard.endswith(("-1", "-2"))
    )


def head_of(standard: str | None, thread: str) -> str | None:
    """The head that a product standard describes, where it is one."""
    found = {row.heads for row in head_rows() if standard and same_standard(row, standard)}
    return next(iter(found))[0] if len(found) == 1 and len(next(iter(found))) == 1 else None


def rows_for(screw: Screw) -> tuple[HeadRow, ...]:
    """Every row that may describe this screw: its standard's if it names one, else its head's."""
    thread = screw.thread.partition("x")[0]
    return tuple(
        row
        for row in head_rows()
        if row.thread == thread
        and (screw.head is None or screw.head in row.heads)
        and (screw.standard is None or same_standard(row, screw.standard))
    )


def drive_of(screw: Screw, recess: str | None) -> str | None:
    """The drive that the named standard gives this thread, of cross recesses only the one named (PH, PZ).

    None where no standard is named, or where it leaves a choice.
    """
    if screw.standard is None:
        return None
    drives = {row.drive for row in rows_for(screw) if recess is None or row.drive[:2] == recess}
    return drives.pop() if len(drives) == 1 else None
