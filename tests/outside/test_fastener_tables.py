"""Our table of heads and drivers against the ISO tables in the general-purpose package bd_warehouse 0.4.0.

Its licence is Apache-2.0; `pip install --no-deps bd_warehouse` is enough, only its CSV files are read. Cells
in which it differs from the standards are listed here, with the reason, and nowhere skipped silently.
"""

import csv
from collections.abc import Iterator, Mapping
from decimal import Decimal
from importlib.metadata import PackageNotFoundError, distribution
from pathlib import Path

import pytest

from guidebuild.device.head_size import hexalobular
from guidebuild.device.lengths import lengths
from guidebuild.device.standards import HeadRow, head_rows
from guidebuild.device.threads import coarse
from tests.needs import ON_BUILD_SERVER

try:
    FILES = {file.name: file for file in distribution("bd_warehouse").files or ()}
except PackageNotFoundError:
    FILES = {}
pytestmark = pytest.mark.skipif(
    not FILES and not ON_BUILD_SERVER, reason="bd_warehouse is not installed"
)

# our standard -> file, column, kind of driver
TABLES = {
    "ISO 7045": ("raised_cheese_head_parameters.csv", "iso7045", "recess"),
    "DIN 967": ("pan_head_with_collar_parameters.csv", "din967", "recess"),
    "ISO 14583": ("pan_head_parameters.csv", "iso14583", "recess"),
    "ISO 7048": ("cheese_head_parameters.csv", "iso7048", "recess"),
    "ISO 14580": ("cheese_head_parameters.csv", "iso14580", "recess"),
    "ISO 7046": ("countersunk_head_parameters.csv", "iso7046", "recess"),
    "ISO 14581": ("countersunk_head_parameters.csv", "iso14581", "recess"),
    "ISO 14582": ("countersunk_head_parameters.csv", "iso14582", "recess"),
    "ISO 10642": ("countersunk_head_parameters.csv", "iso10642", "s"),
    "ISO 7047": ("raised_countersunk_oval_head_parameters.csv", "iso7047", "recess"),
    "ISO 14584": ("raised_countersunk_oval_head_parameters.csv", "iso14584", "recess"),
    "ISO 4762": ("socket_head_cap_parameters.csv", "iso4762", "s"),
    "ISO 7380-1": ("button_head_parameters.csv", "iso7380_1", "s"),
    "ISO 7380-2": ("button_head_with_collar_parameters.csv", "iso7380_2", "s"),
    "ISO 4026": ("setscrew_parameters.csv", "iso4026", "s"),
}
KEYS = [Decimal(tenths) / 10 for tenths in (7, 9, 13, 15, 20, 25, 30, 40, 50, 60, 80, 100, 120)]

KNOWN_DRIVERS = {("ISO 7047", "M2"): "the table has PH1; ISO 7045 to 7047 have No. 0"}
# Head sizes: whole standards whose column holds another standard's or another size.
KNOWN_HEADS = {
    "ISO 7046": "DIN 965 values (M4 7.5 and 2.2; ISO 8.4 and 2.7)",
    "ISO 7047": "DIN 966 values",
    "ISO 4762": "greatest diameter of knurled heads",
    "ISO 7380-2": "the head without its collar",
}


def read(name: str) -> str:
    """One of the package's CSV files."""
    return Path(str(FILES[name].locate())).read_text(encoding="utf-8")


def cells(file: str) -> Iterator[tuple[str, Mapping[str, str]]]:
    """Thread and cells of each row; headers lose the spaces that some end in."""
    text = read(file)
    lines = list(csv.reader(text.splitlines()))
    heads = [head.strip() for head in lines[0]]
    for line in lines[1:]:
        yield (
            line[0].partition("-")[0],
            dict(zip(heads, (cell.strip() for cell in line), strict=False)),
        )


def rows_of(standard: str) -> list[tuple[HeadRow, Mapping[str, str], str]]:
    """Our rows beside theirs, and the head of their columns."""
    file, column, _ = TABLES[standard]
    theirs = dict(cells(file))
    return [
        (row, theirs[row.thread], column)
        for row in head_rows()
        if row.standard == standard and row.thread in theirs and not row.drive.startswith("PZ")
    ]


def their_driver(cell: str, kind: str) -> str:
    if kind == "recess":
        return cell.replace("T", "TX") if cell.startswith("T") else cell
    return f"hex {max(key for key in KEYS if key <= Decimal(cell)):f}"  # they give the socket's greatest width


@pytest.mark.parametrize("standard", TABLES)
def test_drivers(standard: str) -> None:
    kind = TABLES[standard][2]
    compared = 0
    for row, theirs, column in rows_of(standard):
        cell = theirs.get(f"{column}:{kind}", "")
        if not cell or (standard, row.thread) in KNOWN_DRIVERS:
            continue
        assert row.drive == their_driver(cell, kind), row.thread
        compared += 1
    assert compared >= 3


def differing(standard: str) -> list[tuple[str, str]]:
    """Threads and dimensions of heads in which the two tables differ."""
    return [
        (row.thread, name)
        for row, theirs, column in rows_of(standard)
        for ours, name in ((row.diameter, "dk"), (row.height, "k"))
        if ours is not None
        and (cell := theirs.get(f"{column}:{name}", ""))
        and ours != Decimal(cell)
    ]


@pytest.mark.parametrize("standard", sorted(TABLES.keys() - KNOWN_HEADS.keys()))
def test_head_sizes(standard: str) -> None:
    assert differing(standard) == []


@pytest.mark.parametrize("standard", KNOWN_HEADS)
def test_what_is_listed_as_differing_does(standard: str) -> None:
    """A cell that no longer differs must leave the list."""
    assert differing(standard)


LENGTHS = TABLES | {
    "ISO 1207": ("cheese_head_parameters.csv", "iso1207", ""),
    "ISO 1580": ("pan_head_parameters.csv", "iso1580", ""),
    "ISO 2009": ("countersunk_head_parameters.csv", "iso2009", ""),
    "ISO 2010": ("raised_countersunk_oval_head_parameters.csv", "iso2010", ""),
}
KNOWN_SERIES = {  # what their list has for what ours has, and why
    "ISO 1580": ("68", "6|8"),  # a comma is lost
    "ISO 2009": ("3", "2|2.5|3"),  # its own shortest are 2 mm (M1 to M1.6)
    "ISO 10642": ("100", "100|110"),  # its own longest is 110 mm (M24)
}


@pytest.mark.parametrize("standard", LENGTHS)
def test_lengths(standard: str) -> None:
    """The series of each standard, and the shortest and longest of each thread."""
    file, column, _ = LENGTHS[standard]
    series = {
        row["Screw_Type"]: row["Nominal_Sizes"]
        for row in csv.DictReader(read("nominal_screw_lengths.csv").splitlines())
    }
    theirs = series[column].split(",")
    known, ours = KNOWN_SERIES.get(standard, ("", ""))
    assert not known or known in theirs
    told = [part for one in theirs for part in (ours.split("|") if one == known else [one])]
    compared = 0
    for thread, cell in cells(file):
        shortest, longest = cell.get(f"{column}:short", ""), cell.get(f"{column}:long", "")
        if shortest and longest and thread.startswith("M"):
            inside = [
                Decimal(one)
                for one in told
                if Decimal(shortest) <= Decimal(one) <= Decimal(longest)
            ]
            assert list(lengths(standard, thread)) == inside, thread
            assert (inside[0], inside[-1]) == (Decimal(shortest), Decimal(longest)), thread
            compared += 1
    assert compared >= 5


def test_hexalobular_recesses() -> None:
    """ISO 10664, dimensions A and B."""
    compared = 0
    for row in csv.DictReader(read("iso10664def.csv").splitlines()):
        ours = hexalobular(row["Size"][1:])
        if ours is not None:
            assert ours == (Decimal(row["A"]), Decimal(row["B"])), row["Size"]
            compared += 1
    assert compared >= 10


def test_coarse_pitches() -> None:
    """ISO 261: the pitch in each size of the metric tables, up to M24."""
    found = {}
    for file, _, _ in TABLES.values():
        text = read(file).splitlines()[1:]
        found.update(
            dict(line.split(",")[0].split("-", 1) for line in text if line.startswith("M"))
        )
    compared = {size: coarse("M", size[1:]) for size in found}
    known = {size: thread for size, thread in compared.items() if thread is not None}
    assert len(known) >= 15
    assert {size: thread.pitch for size, thread in known.items()} == {
        size: Decimal(found[size]) for size in known
    }
