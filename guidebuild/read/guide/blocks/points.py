"""`points`: free marks on the picture above."""

from guidebuild.guide.blocks.points import Points
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry


def read(name: str, entry: Entry, report: Report) -> Points:
    """Whatever marks could be read."""
    return Points(
        here=entry.get("here", ()),
        keep_out=entry.get("keep-out", ()),
        arrow=entry.get("arrow", ()),
        span=entry.span,
    )
