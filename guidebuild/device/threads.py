"""Screw threads by name: their diameter and their standard pitches.

Sources: ISO 261 and 262, ISO 1478, ISO 1501, ASME B1.1 and B1.10M; `data/threads.csv` says which row is from
memory.
"""

from dataclasses import dataclass
from decimal import Decimal
from functools import cache

from guidebuild.device.tables import rows


@dataclass(frozen=True, slots=True)
class Thread:
    """One standard thread; lengths in mm. `system` is M, ST, UN, S or UNM."""

    system: str
    size: str  # `2.5`, `4-40`
    diameter: Decimal
    pitch: Decimal
    series: str  # `coarse` or `fine`, of inch threads `UNC` or `UNF`
    source: str


@cache
def threads() -> dict[tuple[str, str], tuple[Thread, ...]]:
    """All that the table knows by system and size, the coarse pitch first."""
    found: dict[tuple[str, str], tuple[Thread, ...]] = {}
    for row in rows("threads"):
        thread = Thread(
            row["system"],
            row["size"],
            Decimal(row["diameter_mm"]),
            Decimal(row["pitch_mm"]),
            row["series"],
            row["source"],
        )
        key = thread.system, thread.size
        found[key] = (*found.get(key, ()), thread)
    return found


def coarse(system: str, size: str) -> Thread | None:
    """The thread that is meant when no pitch is told."""
    known = threads().get((system, size), ())
    return next((one for one in known if one.series != "fine"), None)


def is_pitch(system: str, size: str, number: Decimal) -> bool:
    """Whether a number after the diameter is a standard pitch of it (`M8x1`), not a length (`M3x8`)."""
    return any(one.pitch == number for one in threads().get((system, size), ()))
