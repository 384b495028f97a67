"""`video`: a piece of a film."""

from decimal import Decimal

from guidebuild.guide.blocks.video import Video
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry


def read(name: str, entry: Entry, report: Report) -> Video | None:
    """None where no times are said."""
    show: tuple[Decimal, Decimal] | None = entry.get("show", None)
    if show is None:
        return None
    return Video(show[0], show[1], entry.said("file"), entry.get("when", None), entry.span)
