"""The parts of a record."""

from guidebuild.device.states import Kind
from guidebuild.device.things import Part
from guidebuild.read.device.thing import NOTHING, shared
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said


def part(id_: Said, entry: Entry, base: Said, report: Report) -> Part:
    """One part; it sits on the base unless `mounted-on` says where."""
    host = entry.said("mounted-on")
    outside = host is not None and host.text == NOTHING
    on_base = None if id_.text == base.text else base
    return Part(
        **shared(id_.text, id_.span, Kind.PART, entry, report),
        host=None if outside or id_.text == base.text else host or on_base,
        outside=outside,
        opens_to=entry.get("opens-to", None),
        waste=entry.said("waste"),
        serial=entry.get("serial", False),
        after_change=entry.all_said("after-change"),
    )
