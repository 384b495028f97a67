"""A record in the author's own words, as a layout that can be asked."""

import tempfile
from pathlib import Path
from textwrap import dedent

from guidebuild.device.layout import Layout
from guidebuild.guide.asked import of_device
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.merging import axes
from guidebuild.read.content import read_content


def layout(record: str) -> Layout:
    """The record is read as a device of its own; its options are the configurations."""
    with tempfile.TemporaryDirectory() as folder:
        device = Path(folder) / "devices" / "box" / "device.yaml"
        device.parent.mkdir(parents=True)
        device.write_text("device: box\nname: Box\n" + dedent(record), encoding="utf-8")
        content, findings = read_content(Path(folder))
    assert not findings, [(one.message, one.span.line) for one in findings]
    read = content.devices["box"]
    numbered = Configurations(axes(read.options, of_device(read)))
    return Layout(read, numbered.bits, numbered.everywhere)


def covers(asked: Layout, key: str) -> set[str]:
    """What a thing lies behind, somewhere."""
    return set(asked.covers.behind(key))


def guards(asked: Layout, key: str) -> set[str]:
    """What guards a thing, somewhere."""
    return {guard for guard, _ in asked.guarding.over(key)}


def places(asked: Layout, key: str) -> list[str]:
    """Where a thing is worked."""
    return [place for place, _ in asked.places.of(key)]
