"""The whole device: its record, as one value."""

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal

from guidebuild.device.condition import Condition
from guidebuild.device.option import Option
from guidebuild.device.states import Kind
from guidebuild.device.things import Connector, Hole, Joint, Part, Store, Thing
from guidebuild.source.remembered import remembered
from guidebuild.source.said import Said
from guidebuild.source.span import Span

POWER = "device"  # `switch-off: device`: the id and key of the power store, which every device has


@dataclass(frozen=True, slots=True)
class Group:
    """A fastener group: its holes' keys in order, and the sequence (`cross`, `listed`) if one is told."""

    id: str
    span: Span
    holes: tuple[str, ...]
    sequence: str | None
    name: Said | None = None


@dataclass(frozen=True, slots=True)
class Hazard:
    """`level` is danger, warning, caution or notice; `when_handling` names ids of the record."""

    id: str
    level: str
    hazard: Said
    result: Said | None
    avoid: tuple[Said, ...]
    when_handling: tuple[Said, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class PicturePoints:
    """Points on a picture, placed once: per cent of width and height, by id of the record."""

    file: Said
    points: Mapping[str, tuple[Decimal, Decimal]]  # `head-screws.a` -> (x, y)


@dataclass(frozen=True, slots=True)
class View:
    """A drawing to scale: an SVG file whose groups bear the record's ids, or outlines (SVG paths, mm)."""

    id: str
    span: Span
    file: Said | None
    size: tuple[Decimal, Decimal]  # mm
    outline: Mapping[str, str]  # id -> SVG path data, in mm
    name: Said | None = None


@dataclass(frozen=True, slots=True)
class Identify:
    """How the reader knows that this is the unit meant."""

    look: Said | None
    expect: Said


@dataclass(frozen=True, slots=True)
class Device:
    """Everything that a record says. Mappings keep the record's order.

    `things` holds every Thing by key (parts, holes, connectors, joints, stores, power). `names` maps each
    id that an author may write to keys: a group to its holes, most ids to one key.
    """

    id: str
    name: Said
    span: Span
    base: str  # key of the base part
    identify: Identify | None
    options: tuple[Option, ...]
    things: Mapping[str, Thing]
    names: Mapping[str, tuple[str, ...]]
    groups: Mapping[str, Group]
    functions: Mapping[str, Said]
    hazards: Mapping[str, Hazard]
    pictures: Mapping[str, PicturePoints]
    views: Mapping[str, View]
    folder: str = ""  # where its pictures lie, relative to the content folder
    exclude: tuple[Condition, ...] = ()  # conditions that can't occur

    def part(self, key: str) -> Part:
        """The part of this key (KeyError, AssertionError where it is none: our own mistake)."""
        thing = self.things[key]
        assert isinstance(thing, Part)
        return thing

    def of_kind(self, kind: Kind) -> tuple[Thing, ...]:
        """All things of a kind, in the record's order."""
        return tuple(thing for thing in self.things.values() if thing.kind is kind)

    @property
    @remembered
    def parts(self) -> tuple[Part, ...]:
        """All parts, in the record's order."""
        return tuple(thing for thing in self.things.values() if isinstance(thing, Part))

    @property
    @remembered
    def holes(self) -> tuple[Hole, ...]:
        """All holes of all fastener groups."""
        return tuple(thing for thing in self.things.values() if isinstance(thing, Hole))

    @property
    @remembered
    def connectors(self) -> tuple[Connector, ...]:
        """All connectors."""
        return tuple(thing for thing in self.things.values() if isinstance(thing, Connector))

    @property
    @remembered
    def joints(self) -> tuple[Joint, ...]:
        """All joints."""
        return tuple(thing for thing in self.things.values() if isinstance(thing, Joint))

    @property
    @remembered
    def stores(self) -> tuple[Store, ...]:
        """All stores, power included."""
        return tuple(thing for thing in self.things.values() if isinstance(thing, Store))
