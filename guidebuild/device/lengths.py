"""The lengths in which a product standard lists a screw: its series, from the shortest to the longest of a thread.

A maker may order any length; a bag that names a standard has one of these. Source of each row in
`data/length_series.csv` and `data/length_ranges.csv`.
"""

from decimal import Decimal
from functools import cache

from guidebuild.device.screw import Screw
from guidebuild.device.tables import rows


@cache
def _series() -> dict[str, tuple[Decimal, ...]]:
    return {
        row["standard"]: tuple(map(Decimal, row["lengths_mm"].split("|")))
        for row in rows("length_series")
    }


@cache
def ranges() -> dict[tuple[str, str], tuple[Decimal, Decimal]]:
    """Standard and thread -> the shortest and the longest, in mm."""
    return {
        (row["standard"], row["thread"]): (Decimal(row["shortest_mm"]), Decimal(row["longest_mm"]))
        for row in rows("length_ranges")
    }


def lengths(standard: str, thread: str) -> tuple[Decimal, ...]:
    """Every length of a thread by a standard, in mm; a part (`ISO 7046-2`) has its whole's. Empty where unknown."""
    for name in (standard, standard.rpartition("-")[0]):
        if (name, thread) in ranges():
            shortest, longest = ranges()[name, thread]
            return tuple(one for one in _series()[name] if shortest <= one <= longest)
    return ()


def listed(screw: Screw) -> tuple[Decimal, ...]:
    """The lengths that the screw's own standard lists for its thread; empty where it names none that we know."""
    if screw.standard is None:
        return ()
    return lengths(screw.standard, screw.thread.partition("x")[0])
