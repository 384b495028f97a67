"""Depths as a table for people and as data for programs."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Any

from guidebuild.device.record import Device
from guidebuild.plan.depth.measure import Depth
from guidebuild.plan.draft.names import name, title
from guidebuild.plan.index import (
    FASTENERS,
    LABEL,
    TIE,
    TOOLS,
    depth_points,
    exactly,
    letter,
    parameter,
    rounded,
)  # fmt: skip

COUNTED = (
    "Steps are counted along the order that `guidebuild draft` takes, energy first; a step ends with a part "
    "that comes off or a change of tool."
)
ABSENT = "A priority part that no --role names counts as not there, and takes the full score."


@dataclass(frozen=True, slots=True)
class Row:
    """A part with its classes."""

    depth: Depth
    fasteners: str
    tools: str

    @property
    def points(self) -> tuple[int, int, int] | None:
        """Depth, fasteners, tools; of several configurations the worst."""
        if self.depth.steps is None:
            return None
        return depth_points(self.depth.steps[1]), FASTENERS[self.fasteners], TOOLS[self.tools]


@dataclass(frozen=True, slots=True)
class Index:
    """`parameters`: those that are known; `index` and `letter` only where all six are."""

    parameters: Mapping[str, Decimal]
    index: Decimal | None
    letter: str


def index(
    rows: Sequence[Row], roles: Mapping[str, str], given: Mapping[str, Decimal], folding: bool
) -> Index:
    """`roles`: part -> priority part (`BAT`, ...). A part that is not there takes the full score."""
    scores: dict[str, list[tuple[int, int, int]]] = {}
    for row in rows:
        if row.depth.part in roles:
            scores.setdefault(roles[row.depth.part], []).append(row.points or (1, 1, 1))
    found = {
        name_: parameter(
            {role: [one[at] for one in some] for role, some in scores.items()}, folding
        )
        for at, name_ in enumerate(("SDD", "SF", "ST"))
    } | dict(given)
    if {"SSP", "SSU", "SRI"} <= set(given):
        whole = rounded(exactly(found))
        return Index(found, whole, letter(whole))
    return Index(found, None, "")


def table(device: Device, rows: Sequence[Row]) -> str:
    """A line each part, the columns as wide as they need to be; tools by number, and their names below."""
    tools = {tool: str(n) for n, tool in enumerate(_tools(rows), 1)}
    lines: list[tuple[str, ...]] = [
        ("part", "steps", "parts", "screws", "plugs", "changes", "tools", "used up", "points")
    ]
    for row in rows:
        one = row.depth
        if one.steps is None:
            lines.append((title(name(device, one.part)), "no way", *([""] * 7)))
            continue
        lines.append((
            title(name(device, one.part)),
            str(one.steps[1]) if one.steps[0] == one.steps[1] else f"{one.steps[0]}-{one.steps[1]}",
            str(len(one.off)),
            f"{one.taken_out} of {len(one.screws)} {'kind' if len(one.screws) == 1 else 'kinds'}"
                if one.taken_out
                else "0",
            str(one.plugs),
            str(one.changes),
            " ".join(tools[tool] for tool in one.tools) or "none",
            ", ".join(name(device, key) for key in one.materials) or "nothing",
            "{} {} {}".format(*(row.points or ("", "", ""))),
        ))  # fmt: skip
    widths = [max(len(line[at]) for line in lines) for at in range(len(lines[0]))]
    shown = [
        "  ".join(cell.ljust(width) for cell, width in zip(line, widths, strict=True)).rstrip()
        for line in lines
    ]
    named = ", ".join(f"{number} {tool}" for tool, number in tools.items())
    return "\n".join([*shown, *(["", f"Tools: {named}."] if named else [])]) + "\n"


def _tools(rows: Sequence[Row]) -> list[str]:
    """All tools, each once, in the order in which they are met."""
    return list(dict.fromkeys(tool for row in rows for tool in row.depth.tools))


def as_data(device: Device, rows: Sequence[Row], found: Index) -> dict[str, Any]:
    """The same for programs; figures as strings, so that no reader makes binary fractions of them."""
    return {
        "device": device.id,
        "label": LABEL,
        "counted": COUNTED,
        "rounding": TIE,
        "parts": [_part(row) for row in rows],
        "parameters": {key: str(value) for key, value in found.parameters.items()},
        "index": None if found.index is None else str(found.index),
        "class": found.letter or None,
    }


def _part(row: Row) -> dict[str, Any]:
    one = row.depth
    return {
        "part": one.part,
        "steps": None if one.steps is None else {"least": one.steps[0], "most": one.steps[1]},
        "off": list(one.off),
        "tools": list(one.tools),
        "tool-class": row.tools,
        "screws": list(one.screws),
        "screws-out": one.taken_out,
        "fastener-class": row.fasteners,
        "plugs": one.plugs,
        "tool-changes": one.changes,
        "used-up": list(one.materials),
        "points": None
        if row.points is None
        else dict(zip(("depth", "fasteners", "tools"), row.points, strict=True)),
    }
