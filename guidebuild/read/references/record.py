"""The ids in a device record."""

from collections.abc import Iterator
from typing import Protocol

from guidebuild.device.condition import Condition
from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from guidebuild.device.things import Connector, Hole, Joint, Link, Part, Store, Thing
from guidebuild.device.tool import Tool
from guidebuild.read.faults import file_missing, outside_content
from guidebuild.read.files import Folder, inside
from guidebuild.read.references.conditions import look_up_conditions
from guidebuild.read.references.names import Names
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said


class Around(Protocol):
    """What a record may name besides its own entries, and where findings go."""

    folder: Folder
    report: Report
    tools: dict[str, Tool]


def look_up(device: Device, entry: Entry, around: Around) -> Device:
    """The device with every id looked up; surely misspelt ones lead to what they mean."""
    names = Names(device, around.report)
    base = entry.said("base")
    if base is not None:
        names.things([base], Kind.PART)
    for thing in device.things.values():
        _thing(thing, names, around)
    for hazard in device.hazards.values():
        names.things(hazard.when_handling)
    for section in ("pictures",):
        _points(entry.entry(section), names)
    options = {option.id: option for option in device.options}
    look_up_conditions(_conditions(device), options, around.report)
    _files(device, around)
    return names.mended()


def _thing(thing: Thing, names: Names, around: Around) -> None:
    names.things(thing.behind)
    if thing.at is not None:
        names.things([thing.at])
    match thing:
        case Part():
            if thing.host is not None:
                names.things([thing.host], Kind.PART)
        case Hole():
            _link(thing, names, around)
            if thing.view is not None:
                names.one_of([thing.view], "view", names.device.views)
        case Connector() | Joint():
            _link(thing, names, around)
        case Store():
            names.things([one for one in (thing.inside, thing.through) if one is not None])
            names.things((*thing.filled_by, *thing.emptied_by, *thing.guards))
        case _:
            pass


def _link(link: Link, names: Names, around: Around) -> None:
    names.things(link.ends, Kind.PART)
    names.things(link.guards)
    names.one_of(link.carries, "function", names.device.functions)
    if around.tools:
        names.one_of(link.with_, "tool", around.tools)


def _points(pictures: Entry | None, names: Names) -> None:
    """The ids of points; of a group's map the holes."""
    for picture in pictures.values.values() if pictures else ():
        for id_, value in picture.values.items():
            names.things([picture.key(id_)])
            if isinstance(value, Entry) and id_ in names.device.names:
                for hole, _ in value.each():
                    names.things([Said(f"{id_}.{hole.text}", hole.span)])


def _conditions(device: Device) -> Iterator[Condition | None]:
    yield from device.exclude
    for thing in device.things.values():
        yield thing.when
        if isinstance(thing, Hole):
            for cases in (thing.screw, thing.torque, thing.thread_depth, thing.grip):
                yield from (case.when for case in cases)


def _files(device: Device, around: Around) -> None:
    named = [view.file for view in device.views.values()]
    named += [picture.file for picture in device.pictures.values()]
    if device.identify is not None:
        named.append(device.identify.look)
    for said in named:
        if said is not None:
            there(said, (device.folder,), around)


def there(said: Said, folders: tuple[str, ...], around: Around) -> str | None:
    """The path of a named file, looked for in several folders; told where it is in none or lies outside."""
    paths = [inside(folder, said.text) for folder in folders]
    found = next((path for path in paths if path in around.folder.files), None)
    if found is not None:
        return found
    first = next((path for path in paths if path is not None), None)
    if first is None or any(around.folder.leaves(path) for path in paths if path):
        around.report.tell(outside_content, said.span, path=said.text)
        return None
    do = "put it into " + " or ".join(f"`{folder}/`" for folder in folders)
    around.report.tell(file_missing, said.span, lost=False, file=first, do=do)
    return first
