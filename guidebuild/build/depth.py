"""Depths of a device of a content folder, with what its kits bring and what its tools are called."""

from pathlib import Path

from guidebuild.build.drafting import device_of
from guidebuild.device.layout import Layout
from guidebuild.device.record import Device
from guidebuild.guide.content import Content
from guidebuild.plan.bench import Bench
from guidebuild.plan.depth.classes import fastener_class, tool_class
from guidebuild.plan.depth.measure import depths
from guidebuild.plan.depth.table import Row
from guidebuild.plan.draft.cases import cases_of
from guidebuild.read.content import read_content


def depth_of(root: Path, device: str) -> tuple[Device, list[Row]]:
    """The record, and a row for each of its parts."""
    content, _ = read_content(root)
    record = device_of(content, device)
    cases = cases_of(record)
    bench = Bench(Layout(record, cases.bits, cases.everywhere))
    found = []
    for one in depths(bench, cases, content.tools):
        materials, supplied = _brought(content, record.things[one.part].id)
        found.append(Row(one, fastener_class(one, materials), tool_class(one.tools, supplied)))
    return record, found


def _brought(content: Content, part: str) -> tuple[set[str], set[str]]:
    """Materials by id and tools by name that come with the spare part, in every form of its kits."""
    materials: set[str] = set()
    tools: set[str] = set()
    for kit in content.kits.values():
        if any(said.text == part for said in kit.brings):
            materials |= {one.item.text for one in kit.materials}
            names = [content.tools[said.text] for said in kit.tools if said.text in content.tools]
            tools |= {tool.name.text for tool in names}
    return materials, tools
