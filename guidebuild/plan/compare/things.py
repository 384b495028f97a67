"""What differs between two entries of the same id."""

from collections.abc import Iterable, Iterator

from guidebuild.device.record import Device
from guidebuild.device.states import word_for
from guidebuild.device.things import Connector, Hole, Joint, Link, Part, Store, Thing
from guidebuild.plan.compare.conditions import written
from guidebuild.plan.compare.screws import screw_changes
from guidebuild.plan.draft.names import listed, name
from guidebuild.source.said import Said


def thing_changes(one: Device, other: Device, before: Thing, after: Thing) -> Iterator[str]:
    """Predicates in which `it` is the thing: `sits on the main board instead of the frame`."""
    if (before.name and before.name.text) != (after.name and after.name.text):
        yield f"is called {after.name or after.id} instead of {before.name or before.id}"
    if written(before.when) != written(after.when):
        yield _when(after)
    if before.single_use != after.single_use:
        yield "has to be new each time" if after.single_use else "can be used again"
    if before.starts != after.starts:
        yield _starts(after)
    if _ids(before.at) != _ids(after.at):
        yield "is worked at another place"
    match before, after:
        case Part(), Part():
            yield from _parts(one, other, before, after)
        case Hole(), Hole():
            yield from screw_changes(before, after)
            yield from _links(one, other, before, after)
        case Link(), Link():
            yield from _links(one, other, before, after)
        case Store(), Store():
            yield from _stores(before, after)
        case _:
            yield f"is a {after.kind.value} instead of a {before.kind.value}"


def _when(after: Thing) -> str:
    return f"is there only when {written(after.when)}" if after.when else "is there in every unit"


def _starts(after: Thing) -> str:
    word = word_for(after.kind, after.starts) if after.starts else ""
    return f"is {word} at the start" if word else "begins as it usually does"


def _parts(one: Device, other: Device, before: Part, after: Part) -> Iterator[str]:
    if _ids(before.host) != _ids(after.host):
        yield f"sits on {_said(other, after.host)} instead of {_said(one, before.host)}"
    if before.opens_to != after.opens_to:
        yield (
            f"opens to {after.opens_to}°"
            if after.opens_to is not None
            else "does not open on its cables"
        )
    if before.serial != after.serial:
        yield (
            "has a serial number to write down" if after.serial else "has no serial number any more"
        )
    if _ids(before.waste) != _ids(after.waste):
        yield f"is waste of the kind {after.waste or 'not said'}"


def _links(one: Device, other: Device, before: Link, after: Link) -> Iterator[str]:
    if _all(before.ends) != _all(after.ends):
        ends = listed([_said(other, said) for said in after.ends])
        yield f"joins {ends} instead of {listed([_said(one, said) for said in before.ends])}"
    if _all(before.with_) != _all(after.with_):
        yield f"is worked with {' or '.join(_all(after.with_)) or 'the hand'}"
    if set(_all(before.carries)) != set(_all(after.carries)):
        yield f"carries {_functions(other, after.carries)} instead of {_functions(one, before.carries)}"
    yield from _guards(one, other, before.guards, after.guards)
    if isinstance(before, Connector) and isinstance(after, Connector):
        if before.source != after.source:
            yield "feeds the device" if after.source else "does not feed the device any more"
        if before.live != after.live:
            live = {"unfed": "only while nothing feeds it", "off": "only with the power off"}
            yield f"may be worked {live.get(after.live, 'at any time')}"
        if _ids(before.style) != _ids(after.style):
            yield f"has another lock: {after.style or 'not said'} instead of {before.style or 'not said'}"
    if isinstance(before, Joint) and isinstance(after, Joint) and before.joint != after.joint:
        yield f"is of the kind {after.joint} instead of {before.joint}"


def _stores(before: Store, after: Store) -> Iterator[str]:
    for words, old, new in (
        ("is", before.store, after.store),
        ("is in", _ids(before.inside), _ids(after.inside)),
        ("is emptied through", _ids(before.through), _ids(after.through)),
        ("is filled by", ", ".join(_all(before.filled_by)), ", ".join(_all(after.filled_by))),
        ("is emptied by", ", ".join(_all(before.emptied_by)), ", ".join(_all(after.emptied_by))),
        ("guards", ", ".join(_all(before.guards)), ", ".join(_all(after.guards))),
    ):
        if old != new:
            yield f"{words} {new or 'nothing'} instead of {old or 'nothing'}"


def _guards(
    one: Device, other: Device, before: tuple[Said, ...], after: tuple[Said, ...]
) -> Iterator[str]:
    more = [said for said in after if said.text not in _all(before)]
    less = [said for said in before if said.text not in _all(after)]
    if more:
        yield f"must be open before {listed([_said(other, said) for said in more])} is worked"
    if less:
        yield f"may be closed while {listed([_said(one, said) for said in less])} is worked"


def _functions(device: Device, ids: Iterable[Said]) -> str:
    found = [device.functions[said.text].text for said in ids if said.text in device.functions]
    return listed(found) or "no function"


def _said(device: Device, said: Said | None) -> str:
    keys = device.names.get(said.text, ()) if said is not None else ()
    return f"the {name(device, keys[0])}" if keys else "nothing"


def _ids(said: Said | None) -> str:
    return "" if said is None else said.text


def _all(ids: tuple[Said, ...]) -> list[str]:
    return [said.text for said in ids]
