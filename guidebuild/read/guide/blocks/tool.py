"""`tool`: one that no act implies."""

from guidebuild.guide.blocks.use import Use
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry


def read(name: str, entry: Entry, report: Report) -> Use | None:
    """None where nothing is named."""
    items = entry.all_said("use")
    if not items:
        return None
    return Use(
        what=name,
        items=items,
        amount=entry.get("amount", None),
        when=entry.get("when", None),
        note=entry.said("note"),
        span=entry.span,
    )
