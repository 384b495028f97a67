"""`wait`: time that must pass."""

from guidebuild.device.quantity import Quantity
from guidebuild.guide.blocks.wait import Wait
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry


def read(name: str, entry: Entry, report: Report) -> Wait | None:
    """None where no time is said."""
    time: Quantity | None = entry.get("time", None)
    if time is None:
        return None
    return Wait(time, entry.said("reason"), entry.get("when", None), entry.span)
