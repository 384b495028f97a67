"""Options: what the reader is asked, in a record or a guide."""

from guidebuild.device.option import Option, Origin, Value
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said


def options(entry: Entry | None, origin: Origin) -> tuple[Option, ...]:
    """Every option that still has answers."""
    if entry is None:
        return ()
    found = (_option(id_, one, origin) for id_, one in entry.each())
    return tuple(one for one in found if one is not None and one.values)


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
