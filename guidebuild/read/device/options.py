"""Options: what the reader is asked, in a record or a guide."""

from guidebuild.device.option import Option, Origin, Value
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said


def options(entry: Entry | None, origin: Origin) -> tuple[Option, ...]:
    """Every option; one whose answers were lost has none."""
    if entry is None:
        return ()
    found = (
        _option(id_, entry.values.get(id_.text) or Entry(id_.span), origin)
        for id_ in map(entry.key, entry.marks)
    )
    return tuple(one for one in found if one is not None)


def _option(id_: Said, entry: Entry, origin: Origin) -> Option | None:
    if entry.get("dropped", False):
        return None
    return Option(
        id=id_.text,
        ask=entry.said("ask") or id_,
        values=_values(entry.get("values", None)),
        origin=origin,
        span=id_.span,
        seen_in=entry.said("seen-in"),
    )


def _values(said: object) -> tuple[Value, ...]:
    if isinstance(said, Entry):
        return tuple(Value(id_, label) for id_, label in said.values.items())
    if isinstance(said, tuple):
        return tuple(Value(one.text, one) for one in dict.fromkeys(said))
    return ()
