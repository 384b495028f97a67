"""The ids in a device record."""

from collections.abc import Iterator
from typing import Protocol

from guidebuild.device.condition import Condition
from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from guidebuild.device.things import Connector, Hole, Joint, Link, Part, Store, Thing
from guidebuild.device.tool import Tool
from guidebuild.read.faults import file_missing, outside_content, point_unknown
from guidebuild.read.files import Folder, inside
from guidebuild.read.references.conditions import look_up_conditions
from guidebuild.read.references.names import Names
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry
from guidebuild.source.nearest import nearest
from guidebuild.source.respelt import respelt
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
    _points(entry, names)
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
            names.things(thing.after_change, Kind.STORE)
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


def _points(entry: Entry, names: Names) -> None:
    """The ids that pictures mark (of a group's map the holes) and that views outline."""
    pictures, views = entry.entry("pictures"), entry.entry("views")
    for picture, marks in pictures.each() if pictures else ():
        for id_, value in marks.each():
            if _marked(id_, picture, names) and isinstance(value, Entry):
                for hole, _ in value.each():
                    _marked(Said(f"{id_.text}.{hole.text}", hole.span), picture, names)
    for view, said in views.each() if views else ():
        outline = said.entry("outline")
        for id_, _ in outline.each() if outline else ():
            _marked(id_, view, names)


def _marked(id_: Said, where: Said, names: Names) -> bool:
    """Whether a marked id is one of the record's; told where it is not."""
    known = names.device.names
    if id_.text in known or names.report.knows(id_.span):
        return id_.text in known
    guess = nearest(id_.text, known)
    edits = respelt(id_.span, id_.text, known) if id_.span.text == id_.text else ()
    do = f"write `{guess}`" if guess else "take it out, or add it to the record"
    names.report.tell(
        point_unknown, id_.span, lost=False, edits=edits, id=id_.text, where=where.text, do=do
    )
    return False


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
