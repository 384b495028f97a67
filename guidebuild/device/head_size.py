"""How large the head of a screw is, and its recess: from the product standards, else by the usual proportion.

Sources: `data/fasteners.csv` and `data/hexalobular.csv` (ISO 10664). Where no standard gives a size, the
factors in `data/heads.csv` are common practice, no source.
"""

from dataclasses import dataclass
from decimal import Decimal
from functools import cache

from guidebuild.device.screw import Screw
from guidebuild.device.standards import HeadRow, rows_for
from guidebuild.device.tables import rows


@dataclass(frozen=True, slots=True)
class HeadSize:
    """Greatest diameter and height in mm. `standard` is None where only the usual proportion is known."""

    diameter: Decimal
    height: Decimal
    standard: str | None


@cache
def _factors() -> dict[str, tuple[Decimal, Decimal]]:
    return {
        row["head"]: (Decimal(row["diameter_factor"]), Decimal(row["height_factor"]))
        for row in rows("heads")
    }


def head_size(screw: Screw) -> HeadSize:
    """Size of the head of a screw with a known diameter; a screw of no known head is taken for a pan head."""
    found = min(rows_for(screw), key=lambda row: _distance(row, screw), default=None)
    if screw.head is not None and found and found.diameter and found.height:
        return HeadSize(found.diameter, found.height, found.standard)
    wide, high = _factors()[screw.head or "pan"]
    diameter = screw.diameter or Decimal(3)
    return HeadSize(diameter * wide, diameter * high, None)


def _distance(row: HeadRow, screw: Screw) -> tuple[bool, bool, bool]:
    """Rows with sizes first, then those of the same drive, then ISO before what it replaced."""
    return (
        row.diameter is None or row.height is None,
        row.drive != screw.drive,
        "ISO" not in row.standard,
    )


@cache
def hexalobular(number: str) -> tuple[Decimal, Decimal] | None:
    """Across points and inner diameter in mm of a hexalobular recess; None for an unknown number."""
    for row in rows("hexalobular"):
        if row["number"] == number:
            points = Decimal(row["across_points_mm"])
            inner = Decimal(row["inner_mm"]) if row["inner_mm"] else points * Decimal("0.72")
            return points, inner
    return None
