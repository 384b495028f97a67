"""`allow: {rule: reason}`, wherever it stands."""

from guidebuild.guide.guide import Allow
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said
from guidebuild.source.span import Span


def allows(entry: Entry, over: Span) -> list[Allow]:
    """The rules that an entry silences in `over`; a reason may be empty, which is told later."""
    inside = entry.entry("allow")
    if inside is None:
        return []
    return [
        Allow(rule, inside.values.get(rule.text) or Said("", rule.span), over)
        for rule in map(inside.key, inside.marks)
    ]
