"""Records written in a test, read as an author's are."""

import tempfile
from pathlib import Path

from guidebuild.device.layout import Layout
from guidebuild.device.record import Device
from guidebuild.guide.asked import of_device
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.merging import axes
from guidebuild.plan.bench import Bench
from guidebuild.read.content import read_content

CONTENT = Path(__file__).parents[2] / "content"


def device(body: str) -> Device:
    """The device that a record's entries make; anything that the reader says of it is a mistake of the test."""
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder) / "devices" / "d"
        home.mkdir(parents=True)
        (Path(folder) / "guides").mkdir()
        (home / "device.yaml").write_text(f"device: d\nname: A device\n{body}", encoding="utf-8")
        content, findings = read_content(Path(folder), rest=True)
    assert not findings, findings[0]
    return content.devices["d"]


def bench(record: Device) -> Bench:
    """The device as a graph, in all its configurations."""
    cases = Configurations(axes(record.options, of_device(record)), record.exclude)
    return Bench(Layout(record, cases.bits, cases.everywhere))


def demo() -> dict[str, Device]:
    """The demo devices."""
    return dict(read_content(CONTENT)[0].devices)
