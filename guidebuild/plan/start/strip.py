"""The strip-down sheet: bench work in the order of removal, one line for each thing that held a part.

Columns by their heads, in any order; `part` and `held by` are needed. Lines of one part stand together; a line
without a part goes on with the part above. Commas or semicolons, with or without a byte-order mark. A line may
name the base itself: what the whole device holds (pressure, charge), or its size.
"""

import csv
from collections.abc import Iterator
from dataclasses import dataclass, field
from io import StringIO

from guidebuild.plan.start import cells as reading
from guidebuild.plan.start.cells import Danger, Wrong

COLUMNS = (
    "no", "part", "on", "under", "held by", "called", "to", "screw", "torque", "count", "tool", "works",
    "size", "hazard", "picture", "note",
)  # fmt: skip
HELD_BY = {
    "screw": "fastener", "screws": "fastener", "captive screw": "captive", "captive screws": "captive",
    "mains plug": "mains", "battery plug": "source",
    "plug": "connector", "plugs": "connector", "connector": "connector", "flex": "connector",
    "clip": "clip", "clips": "clip", "hook": "hook", "hooks": "hook", "lug": "hook", "lugs": "hook",
    "press": "press", "press fit": "press", "magnet": "magnet", "solder": "solder", "tape": "tape",
    "bead": "bead", "guide": "route", "hinge": "hinge", "seal": "seal", "gasket": "seal",
    "o-ring": "seal", "glue": "adhesive", "adhesive": "adhesive", "strips": "adhesive",
    "pad": "film", "film": "film", "fluid": "fluid", "oil": "fluid", "spring": "spring",
    "pressure": "pressure", "charge": "charge", "heat": "heat", "setting": "calibration",
    "nothing": "",  "": "",
}  # fmt: skip
STORED = ("fluid", "spring", "pressure", "charge", "heat", "calibration")


@dataclass(frozen=True, slots=True)
class Hold:
    """One thing that held the part: `kind` is a word of the record, `to` the part at its other end.

    `works`: the functions that go through it. `torque` as the record has it. `called`: its own name, if it has one.
    """

    kind: str
    to: str
    screw: str
    count: int
    tool: str
    note: str
    torque: str = "not-known"
    works: tuple[str, ...] = ()
    danger: Danger | None = None
    called: str = ""


@dataclass(slots=True)
class Removal:
    """A part as it came off. `under`: names of what had to be off before. `size`: width and height, mm."""

    part: str
    on: str
    under: tuple[str, ...]
    picture: str
    holds: list[Hold] = field(default_factory=list)
    size: tuple[float, float] | None = None
    dangers: list[Danger] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class Slip:
    """What is wrong in a line (counted from 1, the heads are line 1), and what to do."""

    line: int
    column: str
    words: str


def read_strip(text: str) -> tuple[list[Removal], list[Slip]]:
    """The removals in order, and everything that could not be read."""
    text = text.removeprefix("\ufeff")
    first = text.partition("\n")[0]
    rows = csv.reader(StringIO(text), delimiter=";" if first.count(";") > first.count(",") else ",")
    slips: list[Slip] = []
    found: list[Removal] = []
    heads: list[str] | None = None
    try:
        for row in rows:
            cells = [" ".join(cell.split()) for cell in row]
            if not any(cells):
                continue
            if heads is not None:
                _line(dict(zip(heads, cells, strict=False)), rows.line_num, found, slips)
                continue
            heads = [cell.lower() for cell in cells]
            slips += _heads(heads)
            if slips:
                return [], slips
    except csv.Error as error:
        slips.append(Slip(rows.line_num, "", f"this line is no CSV ({error}); close its quotes"))
    if heads is None:
        named = ", ".join(COLUMNS)
        slips.append(Slip(1, "", f"the sheet is empty; its first line names the columns: {named}"))
    return found, slips


def _heads(heads: list[str]) -> Iterator[Slip]:
    for head in heads:
        if head and head not in COLUMNS:
            yield Slip(1, head, f"there is no column `{head}`; there are: {', '.join(COLUMNS)}")
    for needed in ("part", "held by"):
        if needed not in heads:
            yield Slip(1, needed, f"the column `{needed}` is missing")


def _line(cells: dict[str, str], line: int, found: list[Removal], slips: list[Slip]) -> None:
    part = cells.get("part", "")
    if not part and not found:
        slips.append(Slip(line, "part", "the first line names no part; say what came off"))
        return
    if part and (not found or found[-1].part != part):
        if any(one.part == part for one in found):
            slips.append(Slip(line, "part", f"{part} came off before; give this one another name"))
            return
        found.append(Removal(part, cells.get("on", ""), _named(cells, "under"), ""))
    for told in _held(cells, found[-1]):
        slips.append(Slip(line, told.column, told.words))


def _held(cells: dict[str, str], removal: Removal) -> Iterator[Wrong]:
    """Adds what a line says to the part; yields what can't be read in it."""
    word = cells.get("held by", "").lower()
    read = (
        reading.screw(cells), reading.torque(cells), reading.count(cells), reading.size(cells),
        reading.danger(cells),
    )  # fmt: skip
    screw, torque, count, size, danger = read
    if word not in HELD_BY:
        known = ", ".join(sorted(set(HELD_BY) - {""}))
        yield Wrong("held by", f"`{word}` is not known here; there are: {known}")
    yield from (one for one in read if isinstance(one, Wrong))
    if not isinstance(size, Wrong):
        removal.size = removal.size or size
    removal.picture = removal.picture or cells.get("picture", "")
    if isinstance(screw, Wrong) or isinstance(torque, Wrong) or isinstance(count, Wrong):
        return
    kind, found = HELD_BY.get(word, ""), None if isinstance(danger, Wrong) else danger
    works = _named(cells, "works")
    if works and (not kind or kind in STORED):
        yield Wrong(
            "works",
            "what works through it stands on the line of a plug, a contact, a seal or a screw",
        )
    if kind:
        removal.holds.append(
            Hold(
                kind, cells.get("to", ""), screw, count, cells.get("tool", ""), cells.get("note", ""),
                torque, works, found, cells.get("called", ""),
            )
        )  # fmt: skip
    elif found is not None:
        removal.dangers.append(found)


def _named(cells: dict[str, str], column: str) -> tuple[str, ...]:
    """Several names in a cell, with `+` between."""
    return tuple(filter(None, (one.strip() for one in cells.get(column, "").split("+"))))
