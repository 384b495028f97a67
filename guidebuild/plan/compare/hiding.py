"""Which cover hides what, before and after: a list of covers in a record, told from the cover's side."""

from collections.abc import Iterator

from guidebuild.device.layout import Layout
from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from guidebuild.plan.compare.change import Change
from guidebuild.plan.draft.cases import cases_of
from guidebuild.plan.draft.names import name, names, title

_WORDS = {
    Kind.PART: ("part", "parts"),
    Kind.FASTENER: ("screw", "screws"),
    Kind.CONNECTOR: ("plug", "plugs"),
    Kind.JOINT: ("joint", "joints"),
    Kind.STORE: ("store", "stores"),
}


def hiding_changes(one: Device, other: Device) -> Iterator[Change]:
    """For each part that is in both: what it hides now and did not, and the other way round."""
    before, after = _hidden(one), _hidden(other)
    for part in other.parts:
        if part.key in one.things:
            old, new = before.get(part.key, set()), after.get(part.key, set())
            yield from _told(other, part.key, new - old, one, "hides {count} more {kind}: {names}")
            yield from _told(one, part.key, old - new, other, "hides {count} {kind} less: {names}")


def _hidden(device: Device) -> dict[str, set[str]]:
    """By cover: the keys of what lies behind it."""
    cases = cases_of(device)
    layout = Layout(device, cases.bits, cases.everywhere)
    found: dict[str, set[str]] = {}
    for key in device.things:
        for cover in layout.covers.behind(key):
            found.setdefault(cover, set()).add(key)
    return found


def _told(
    device: Device, cover: str, keys: set[str], there: Device, words: str
) -> Iterator[Change]:
    """One sentence a kind, of what is in both records: what is new or gone is told for itself."""
    for kind, (single, several) in _WORDS.items():
        mine = [key for key in device.things if key in keys and key in there.things]
        mine = [key for key in mine if device.things[key].kind is kind]
        if mine:
            said = words.format(
                count={1: "one"}.get(len(mine), str(len(mine))),
                kind=single if len(mine) == 1 else several,
                names=names(device, mine),
            )
            ids = frozenset(device.things[key].id for key in (cover, *mine))
            yield Change(f"{title('the ' + name(device, cover))} {said}.", ids)
