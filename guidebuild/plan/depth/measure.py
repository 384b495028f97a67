"""Disassembly depth of each part of a record, counted along the order that a draft takes."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from guidebuild.device.acts import Verb
from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from guidebuild.device.things import Hole, Link, Part
from guidebuild.device.tool import Tool
from guidebuild.guide.configurations import Configurations
from guidebuild.plan.bench import Bench
from guidebuild.plan.openings import links_across
from guidebuild.plan.steps import Operation, steps
from guidebuild.plan.taking import Taken, take


@dataclass(frozen=True, slots=True)
class Depth:
    """One part. `steps`: fewest and most over the configurations that have it; None where no order leads to it.

    `off`: the parts that come off for it, itself last. `tools`, `screws` (designations) and `materials` (what
    is used up) are those of all configurations together. `changes`: of tool, at most.
    """

    part: str
    steps: tuple[int, int] | None
    off: tuple[str, ...] = ()
    tools: tuple[str, ...] = ()
    screws: tuple[str, ...] = ()
    taken_out: int = 0
    plugs: int = 0
    materials: tuple[str, ...] = ()
    changes: int = 0


def depths(bench: Bench, cases: Configurations, tools: Mapping[str, Tool]) -> Iterator[Depth]:
    """Each part that belongs to the device, in the record's order."""
    for part in bench.layout.device.parts:
        if not part.outside and not part.packing and part.key != bench.layout.device.base:
            yield _depth(bench, cases, part, tools)


def _depth(bench: Bench, cases: Configurations, part: Part, tools: Mapping[str, Tool]) -> Depth:
    task = bench.off(part.key)
    taken = None if task is None else take(bench, [task])
    if taken is None:
        return Depth(part.key, None)
    here = bench.layout.presence.where[part.key]
    counts = [
        _counted(bench, [one for one in taken.acts if one.where >> number & 1])
        for number in range(cases.total)
        if here >> number & 1
    ]
    keys = [key for one in taken.acts for key in one.opening.keys]
    things = [bench.layout.device.things[key] for key in keys]
    return Depth(
        part.key,
        (min(one[0] for one in counts), max(one[0] for one in counts)),
        tuple(
            dict.fromkeys(key for key in keys if bench.layout.device.things[key].kind is Kind.PART)
        ),
        tuple(
            dict.fromkeys(_tool(one.opening.tool, tools) for one in taken.acts if one.opening.tool)
        ),
        tuple(dict.fromkeys(_designation(one) for one in things if isinstance(one, Hole))),
        max(one[2] for one in counts),
        sum(1 for one in things if one.kind is Kind.CONNECTOR),
        _materials(bench, part, keys),
        max(one[1] for one in counts),
    )


def _counted(bench: Bench, acts: Sequence[Taken]) -> tuple[int, int, int]:
    """Steps, changes of tool, screws."""
    device = bench.layout.device
    lifted: set[str] = set()
    operations = []
    for one in acts:
        key = one.opening.keys[0]
        part = device.things[key].kind is Kind.PART
        removes = (
            part and key not in lifted
        )  # a part that was opened and then taken off is one removal
        lifted |= {key} if part else set()
        operations.append(Operation(one.opening.tool, removes))
    tools = [one.tool for one in operations if one.tool]
    changes = sum(1 for one, other in pairwise(tools) if one != other)
    screws = sum(
        len(one.opening.keys)
        for one in acts
        if one.opening.verb in (Verb.REMOVE, Verb.LOOSEN)
        and device.things[one.opening.keys[0]].kind is Kind.FASTENER
    )
    return steps(operations), changes, screws


def _tool(tool: str, tools: Mapping[str, Tool]) -> str:
    """By its name in tools.yaml; a drive by the driver that fits it."""
    if tool in tools:
        return tools[tool].name.text
    plain = tool.replace(" ", "").casefold()
    for one in tools.values():
        if any(fit.text.replace(" ", "").casefold() == plain for fit in one.fits):
            return one.name.text
    return tool


def _designation(hole: Hole) -> str:
    return hole.screw[0].value.text if hole.screw else hole.group


def _materials(bench: Bench, part: Part, keys: Sequence[str]) -> tuple[str, ...]:
    """Single-use things that are opened on the way, and seals that a part breaks."""
    device: Device = bench.layout.device
    opened = dict.fromkeys(keys)
    parts = [key for key in opened if device.things[key].kind is Kind.PART]
    seals = {
        link.key
        for key in parts
        for link in links_across(bench.layout, key)
        if isinstance(link, Link) and link.single_use and link.kind is Kind.JOINT
    }
    return tuple(
        key
        for key, thing in device.things.items()
        if thing.single_use and key in seals | set(opened) and key != part.key
    )
