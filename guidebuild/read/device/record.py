"""A device record: its map as read, with the record that it is based on, into one Device."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from guidebuild.device.condition import Condition
from guidebuild.device.option import Origin
from guidebuild.device.record import POWER, Device, Group
from guidebuild.device.states import Kind
from guidebuild.device.things import Store, Thing
from guidebuild.read.device import links, shown
from guidebuild.read.device.fasteners import fasteners
from guidebuild.read.device.options import options
from guidebuild.read.device.parts import part
from guidebuild.read.faults import duplicate_id
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry
from guidebuild.source.finding import Related
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(slots=True)
class Things:
    """What is collected of a record: things by key, the keys that an id stands for, groups."""

    report: Report
    things: dict[str, Thing]
    names: dict[str, tuple[str, ...]]
    groups: dict[str, Group]

    def add(self, id_: str, span: Span, *things: Thing) -> bool:
        """Take an entry in; an id that is taken is told and left out."""
        if id_ in self.names:
            first = self.things[self.names[id_][0]].span
            related = (Related(first, "taken here"),) if first.source.text else ()
            self.report.tell(
                duplicate_id, span, related=related, id=id_, do="give one of the two another id"
            )
            return False
        self.names[id_] = tuple(thing.key for thing in things)
        self.things.update({thing.key: thing for thing in things})
        return True


def device(entry: Entry, folder: str, report: Report) -> Device | None:
    """The device that a record says; None where it has no part at all."""
    parts = list(_each(entry, "parts"))
    id_ = entry.said("device")
    if not parts or id_ is None:
        return None
    base = entry.said("base")
    if base is None or base.text not in {name.text for name, _ in parts}:
        base = parts[0][0]  # an unknown base is told where ids are looked up
    found = _things(entry, base, report)
    return Device(
        id=id_.text,
        name=entry.said("name") or id_,
        span=id_.span,
        base=base.text,
        identify=shown.identify(entry.entry("identify")),
        options=options(entry.entry("options"), Origin.DEVICE),
        things=found.things,
        names=found.names,
        groups=found.groups,
        functions=dict(_texts(entry)),
        hazards=_made(shown.hazard(name, one) for name, one in _each(entry, "hazards")),
        pictures={name.text: shown.points(name, one) for name, one in _each(entry, "pictures")},
        views={name.text: shown.view(name, one) for name, one in _each(entry, "views")},
        folder=folder,
        exclude=_conditions(entry),
    )


def _things(entry: Entry, base: Said, report: Report) -> Things:
    power = Store(key=POWER, id=POWER, span=base.span, kind=Kind.POWER, store="power")
    found = Things(report, {}, {}, {})
    found.add(POWER, base.span, power)
    for name, one in _each(entry, "parts"):
        found.add(name.text, name.span, part(name, one, base, report))
    for name, one in _each(entry, "fasteners"):
        group, holes = fasteners(name, one, base, report)
        if found.add(name.text, name.span, *holes):
            found.groups[name.text] = group
            found.names.update({hole.id: (hole.key,) for hole in holes})
    for name, one in _each(entry, "connectors"):
        found.add(name.text, name.span, links.connector(name, one, report))
    for name, one in _each(entry, "joints"):
        found.add(name.text, name.span, links.joint(name, one, report))
    for name, one in _each(entry, "stores"):
        found.add(name.text, name.span, links.store(name, one, report))
    return found


def _each(entry: Entry, section: str) -> Iterator[tuple[Said, Any]]:
    """Each entry of a section with its id; those that a record drops are left out."""
    inside = entry.entry(section)
    if inside is None:
        return
    for name in map(inside.key, inside.marks):
        value = inside.values.get(name.text, None) or Entry(name.span)
        if not (isinstance(value, Entry) and value.get("dropped", False)):
            yield name, value


def _texts(entry: Entry) -> Iterator[tuple[str, Said]]:
    """Each function with what the reader sees of it; where that was lost, its id."""
    for name, said in _each(entry, "functions"):
        yield name.text, said if isinstance(said, Said) else name


def _made(found: Iterator[Any]) -> Mapping[str, Any]:
    return {one.id: one for one in found if one is not None}


def _conditions(entry: Entry) -> tuple[Condition, ...]:
    conditions: tuple[Condition, ...] = entry.get("exclude", ())
    return conditions
