"""The names and sizes of tools and materials: they have no guide, record or kit of their own."""

from collections.abc import Mapping
from dataclasses import replace

from guidebuild.device.tool import Tool
from guidebuild.translate.segments.segment import Segment
from guidebuild.translate.segments.slots import Slots

FILE = "tools.yaml"


def tool_texts(tools: Mapping[str, Tool], slots: Slots) -> dict[str, Tool]:
    """The tools with each text as the walk's `translate` gives it."""
    slots.file, slots.notes = FILE, ()
    told = {}
    for id_, tool in tools.items():
        slots.place = id_
        name, size = slots.said(tool.name, "name"), slots.maybe(tool.size, "size")
        told[id_] = replace(tool, name=name, size=size)
    return told


def tool_segments(tools: Mapping[str, Tool]) -> tuple[Segment, ...]:
    """What a translator gets of them."""
    found: list[Segment] = []
    tool_texts(tools, Slots(lambda segment: found.append(segment)))
    return tuple(found)
