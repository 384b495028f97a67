"""What every entry of a record has: name, condition, what it lies behind, how it starts."""

from typing import Any, TypedDict

from guidebuild.device.condition import Condition
from guidebuild.device.states import WORDS, Kind, State
from guidebuild.read.faults import unknown_value
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry
from guidebuild.source.respelt import respelt
from guidebuild.source.said import Said
from guidebuild.source.span import Span

NOTHING = "nothing"


class Shared(TypedDict):
    """The fields of Thing that are read in one way for all kinds."""

    key: str
    id: str
    span: Span
    kind: Kind
    name: Said | None
    when: Condition | None
    at: Said | None
    behind: tuple[Said, ...]
    behind_inherits: bool
    single_use: bool
    starts: State | None
    note: Said | None


def shared(id_: str, span: Span, kind: Kind, entry: Entry, report: Report) -> Shared:
    """The fields that every Thing has."""
    behind = entry.all_said("behind")
    return Shared(
        key=id_,
        id=id_,
        span=span,
        kind=kind,
        name=entry.said("name"),
        when=entry.get("when", None),
        at=entry.said("at"),
        behind=tuple(one for one in behind if one.text != NOTHING),
        behind_inherits=all(one.text != NOTHING for one in behind),
        single_use=entry.get("single-use", False),
        starts=state(entry.said("starts"), kind, report),
        note=entry.said("note"),
    )


def state(word: Said | None, kind: Kind, report: Report) -> State | None:
    """The state that a word says of a kind."""
    if word is None:
        return None
    known = WORDS[kind]
    if word.text in known:
        return known[word.text]
    report.tell(
        unknown_value,
        word.span,
        edits=respelt(word.span, word.text, known),
        value=word.text,
        what="state of the power" if kind is Kind.POWER else f"state of a {kind.value}",
        do="write one of " + ", ".join(known),
    )
    return None


def merged(first: Entry, second: Entry) -> Entry:
    """Two maps as one: what the second says counts, where both say a map they are merged key by key."""
    marks = {**first.marks, **second.marks}
    values: dict[str, Any] = dict(first.values)
    for key, value in second.values.items():
        old = values.get(key)
        if isinstance(old, Entry) and isinstance(value, Entry):
            value = merged(old, value)
        values[key] = value
    return Entry(second.place, marks, values)
