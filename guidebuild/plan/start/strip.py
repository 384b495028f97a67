"""The strip-down sheet: bench work in the order of removal, one line for each thing that held a part.

Columns by their heads, in any order; `part` and `held by` are needed. Lines of one part stand together; a line
without a part goes on with the part above. Commas or semicolons, with or without a byte-order mark.
"""

import csv
from collections.abc import Iterator
from dataclasses import dataclass, field
from io import StringIO

from guidebuild.device.designation import parse_screw
from guidebuild.source.span import Span
from guidebuild.source.text import Source

COLUMNS = (
    "no", "part", "on", "under", "held by", "to", "screw", "count", "tool", "picture", "note",
)  # fmt: skip
HELD_BY = {
    "screw": "fastener", "screws": "fastener", "captive screw": "captive", "captive screws": "captive",
    "plug": "connector", "plugs": "connector", "connector": "connector", "flex": "connector",
    "clip": "clip", "clips": "clip", "hook": "hook", "hooks": "hook", "lug": "hook", "lugs": "hook",
    "press": "press", "press fit": "press", "magnet": "magnet", "solder": "solder", "tape": "tape",
    "bead": "bead", "guide": "route", "hinge": "hinge", "seal": "seal", "gasket": "seal",
    "o-ring": "seal", "glue": "adhesive", "adhesive": "adhesive", "strips": "adhesive",
    "pad": "film", "film": "film", "fluid": "fluid", "oil": "fluid", "spring": "spring",
    "pressure": "pressure", "charge": "charge", "heat": "heat", "nothing": "",  "": "",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Hold:
    """One thing that held the part: `kind` is a word of the record, `to` the part at its other end."""

    kind: str
    to: str
    screw: str
    count: int
    tool: str
    note: str


@dataclass(slots=True)
class Removal:
    """A part as it came off. `under`: names of what had to be off before, because it lay over it."""

    part: str
    on: str
    under: tuple[str, ...]
    picture: str
    holds: list[Hold] = field(default_factory=list)


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
        for cells in rows:
            if not any(cell.strip() for cell in cells):
                continue
            if heads is None:
                heads = [cell.strip().lower() for cell in cells]
                slips += _heads(heads)
                if slips:
                    return [], slips
                continue
            _line(
                dict(zip(heads, (c.strip() for c in cells), strict=False)),
                rows.line_num,
                found,
                slips,
            )
    except csv.Error as error:
        slips.append(Slip(rows.line_num, "", f"this line is no CSV ({error}); close its quotes"))
    if heads is None:
        slips.append(
            Slip(
                1, "", f"the sheet is empty; its first line names the columns: {', '.join(COLUMNS)}"
            )
        )
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
        under = tuple(filter(None, (one.strip() for one in cells.get("under", "").split("+"))))
        found.append(Removal(part, cells.get("on", ""), under, cells.get("picture", "")))
    hold = _hold(cells, line, slips)
    if hold is not None:
        found[-1].holds.append(hold)


def _hold(cells: dict[str, str], line: int, slips: list[Slip]) -> Hold | None:
    word = cells.get("held by", "").lower()
    if word not in HELD_BY:
        known = ", ".join(sorted(set(HELD_BY) - {""}))
        slips.append(Slip(line, "held by", f"`{word}` is not known here; there are: {known}"))
        return None
    kind = HELD_BY[word]
    screw = cells.get("screw", "")
    if screw and parse_screw(screw, Span(Source("strip", screw), 0, len(screw))) is None:
        slips.append(Slip(line, "screw", f"`{screw}` is no screw; write it as `M2.5x8 pan TX8`"))
        return None
    count = cells.get("count", "") or "1"
    if not (count.isascii() and count.isdigit() and 0 < int(count) < 1000):
        slips.append(Slip(line, "count", f"`{count}` is no count; write a whole number"))
        return None
    if not kind:
        return None
    return Hold(
        kind, cells.get("to", ""), screw, int(count), cells.get("tool", ""), cells.get("note", "")
    )
