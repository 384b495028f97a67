"""What guides draw on: settings, tools, terms, records, kits and shared stages, each read once when first asked for."""

from dataclasses import dataclass, field, replace
from functools import cached_property

from guidebuild.device.kit import Kit
from guidebuild.device.record import Device
from guidebuild.device.tool import Tool
from guidebuild.guide.guide import Allow
from guidebuild.guide.settings import Settings, Terms
from guidebuild.read import content_wide
from guidebuild.read.device.kit import kit
from guidebuild.read.device.record import device
from guidebuild.read.device.thing import merged
from guidebuild.read.faults import unknown_id, wrong_type
from guidebuild.read.files import Folder
from guidebuild.read.guide.allow import allows
from guidebuild.read.references.record import look_up
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry
from guidebuild.read.yaml.read import read_entry
from guidebuild.source.edit import Edit
from guidebuild.source.nearest import nearest
from guidebuild.source.respelt import respelt
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass
class Library:
    """Everything is read at most once; a record that can't be read is None."""

    folder: Folder
    report: Report
    settings: Settings = field(default_factory=Settings)
    tools: dict[str, Tool] = field(default_factory=dict)
    terms: dict[str, Terms] = field(default_factory=dict)
    devices: dict[str, Device | None] = field(default_factory=dict)
    kits: dict[str, Kit | None] = field(default_factory=dict)
    record_allows: dict[str, list[Allow]] = field(default_factory=dict)
    _records: dict[str, Entry | None] = field(default_factory=dict)

    def open(self) -> None:
        """Read what holds for the whole folder."""
        self.settings = content_wide.settings(self._entry("guidebuild.yaml", "settings"))
        self.tools = content_wide.tools(self._entry("tools.yaml", "tools"))
        self.terms = content_wide.terms(self._entry("terms.yaml", "terms"))

    def _entry(self, path: str, schema: str) -> Entry | None:
        if path not in self.folder.files:
            return None
        source = self.folder.source(path)
        if source is None:
            self.report.lose(path)
            return None
        return read_entry(source, 0, len(source.text), schema, path, self.report)

    @cached_property
    def device_ids(self) -> tuple[str, ...]:
        """The ids of all records that exist, read or not."""
        return self._ids("devices/", "/device.yaml")

    @cached_property
    def kit_ids(self) -> tuple[str, ...]:
        """The ids of all kits that exist, read or not."""
        return self._ids("kits/", ".yaml")

    def _ids(self, before: str, after: str) -> tuple[str, ...]:
        found = (
            path[len(before) : -len(after)]
            for path in self.folder.files
            if path.startswith(before) and path.endswith(after)
        )
        return tuple(sorted(id_ for id_ in found if id_ and "/" not in id_))

    def device(self, said: Said) -> Device | None:
        """The device that an author names; told where there is none."""
        if said.text not in self.device_ids:
            self._unknown(said, "device", self.device_ids, "devices/{}/device.yaml")
            return None
        return self.record(said.text)

    def record(self, id_: str) -> Device | None:
        """The device of a record that exists."""
        if id_ not in self.devices:
            self.devices[id_] = None
            self.devices[id_] = self._device(id_)
        return self.devices[id_]

    def _device(self, id_: str) -> Device | None:
        entry = self._record(id_, ())
        if entry is None:
            return None
        self._same_name(entry, "device", id_)
        made = device(entry, f"devices/{id_}", self.report)
        self.record_allows[id_] = allows(entry, _whole(entry.span))
        return None if made is None else look_up(made, entry, self)

    def _record(self, id_: str, chain: tuple[str, ...]) -> Entry | None:
        """A record's map, with the record that it is based on under it."""
        if id_ not in self._records:
            self._records[id_] = self._entry(f"devices/{id_}/device.yaml", "device")
        entry = self._records[id_]
        first = entry.said("based-on") if entry else None
        if entry is None or first is None:
            return entry
        if first.text in (*chain, id_):
            self._unknown(first, "other device", (), "a record that is not based on this one")
            return entry
        if first.text not in self.device_ids:
            self._unknown(first, "device", self.device_ids, "devices/{}/device.yaml")
            return entry
        below = self._record(first.text, (*chain, id_))
        return entry if below is None else _on_top(below, entry)

    def kit(self, said: Said) -> Kit | None:
        """The kit that an author names; told where there is none."""
        if said.text not in self.kit_ids:
            self._unknown(said, "kit", self.kit_ids, "kits/{}.yaml")
            return None
        return self.kit_of(said.text)

    def kit_of(self, id_: str) -> Kit | None:
        """The kit of a file that exists."""
        if id_ not in self.kits:
            entry = self._entry(f"kits/{id_}.yaml", "kit")
            if entry is not None:
                self._same_name(entry, "kit", id_)
            self.kits[id_] = kit(entry) if entry else None
        return self.kits[id_]

    def _same_name(self, entry: Entry, key: str, name: str) -> None:
        said = entry.said(key)
        if said is not None and said.text != name:
            self.report.tell(
                wrong_type,
                said.span,
                lost=False,
                edits=(Edit(said.span, name),),
                what=f"`{key}`",
                wanted=f"be `{name}`, as the {'folder' if key == 'device' else 'file'} is named",
                found=f", not `{said.text}`",
                do="let the two have one name",
            )

    def _unknown(self, said: Said, what: str, known: tuple[str, ...], file: str) -> None:
        guess = nearest(said.text, known)
        self.report.tell(
            unknown_id,
            said.span,
            edits=respelt(said.span, said.text, known),
            what=what,
            id=said.text,
            do=f"write `{guess}`" if guess else "write " + file.format(said.text),
        )


def _whole(span: Span) -> Span:
    return Span(span.source, 0, len(span.source.text))


def _on_top(below: Entry, entry: Entry) -> Entry:
    """What a record changes, over the record that it is based on; silenced rules stay in their file."""
    bare = replace(below, values={k: v for k, v in below.values.items() if k != "allow"})
    return merged(bare, entry)
