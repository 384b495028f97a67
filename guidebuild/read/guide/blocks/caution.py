"""`caution`: the record's words, or the guide's own."""

from guidebuild.guide.blocks.caution import Caution
from guidebuild.read.device.shown import LEVELS
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry


def read(name: str, entry: Entry, report: Report) -> Caution | None:
    """None where neither a hazard of the record nor a level is said."""
    level = next((word for word in LEVELS if word in entry.values), None)
    hazards = entry.all_said("for")
    if level is None and not hazards:
        return None
    return Caution(
        hazards=hazards,
        level=entry.key(level) if level else None,
        hazard=entry.said(level) if level else None,
        result=entry.said("result"),
        avoid=entry.all_said("avoid"),
        when=entry.get("when", None),
        span=entry.span,
    )
