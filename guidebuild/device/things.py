"""The entries of a device record that have a state: parts, screws, plugs, clips, and what the device stores."""

from dataclasses import dataclass, field
from decimal import Decimal
from typing import Generic, TypeVar

from guidebuild.device.condition import Condition
from guidebuild.device.quantity import Quantity
from guidebuild.device.screw import Screw
from guidebuild.device.states import Kind, State
from guidebuild.source.said import Said
from guidebuild.source.span import Span

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Case(Generic[T]):
    """One of several values of a key; the first whose condition holds is the value."""

    value: T
    when: Condition | None
    span: Span = field(compare=False)


@dataclass(frozen=True, slots=True)
class Torque:
    """A figure, or the word `by-hand` or `not-known`; just one of the two is set."""

    figure: Quantity | None
    word: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Thing:
    """What every entry has.

    `id` is what the author writes (`plate-screws.near` for a hole). `key` is unique in a device: the same
    as `id`, except that where a guide covers several models whose records differ in this entry, each
    form has its own key (`cover@larch-p3`) and `when` says in which model it is.
    """

    key: str
    id: str
    span: Span = field(compare=False)  # of the id, where the entry begins
    kind: Kind
    name: Said | None = None
    when: Condition | None = None
    at: Said | None = None
    behind: tuple[Said, ...] = ()
    behind_inherits: bool = True  # False after `behind: nothing`
    single_use: bool = False
    starts: State | None = None
    note: Said | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Part(Thing):
    """`host` is None for the base, and for a part outside the device (`mounted-on: nothing`)."""

    host: Said | None = None
    outside: bool = False
    opens_to: Decimal | None = None  # degrees, while its plugs are connected
    waste: Said | None = None
    serial: bool = False
    after_change: tuple[Said, ...] = ()
    packing: bool = False  # a kit's `take-off`: comes with the new unit, must be off it at the end


@dataclass(frozen=True, slots=True, kw_only=True)
class Link(Thing):
    """What ties parts. `ends`: the parts that it ties (a fastener: what it holds, then what it goes into)."""

    ends: tuple[Said, ...] = ()
    guards: tuple[Said, ...] = ()
    carries: tuple[Said, ...] = ()  # functions that fail when it is not right
    with_: tuple[Said, ...] = ()  # tools, any of them


@dataclass(frozen=True, slots=True, kw_only=True)
class Hole(Link):
    """One hole of a fastener group; the screw that belongs in it."""

    group: str = ""  # the group's id
    screw: tuple[Case[Screw], ...] = ()
    torque: tuple[Case[Torque], ...] = ()
    thread_depth: tuple[Case[Quantity], ...] = ()
    grip: tuple[Case[Quantity], ...] = ()
    captive: bool = False
    view: Said | None = None
    xy: tuple[Decimal, Decimal] | None = None  # mm on the view

    @property
    def hole(self) -> str:
        """The hole's own name in its group."""
        return self.id.rpartition(".")[2]


@dataclass(frozen=True, slots=True, kw_only=True)
class Connector(Link):
    """`live`: `unfed`, `off` or `any`: when it may be worked (the default is filled in)."""

    source: bool = False
    style: Said | None = None
    live: str = "unfed"


@dataclass(frozen=True, slots=True, kw_only=True)
class Joint(Link):
    """`joint`: clip, hook, press, magnet, solder, tape, bead, route, hinge, seal, adhesive, film."""

    joint: str = "clip"


@dataclass(frozen=True, slots=True, kw_only=True)
class Store(Thing):
    """`store`: charge, spring, pressure, fluid, heat, calibration; power is the store of Kind.POWER."""

    store: str = "charge"
    inside: Said | None = None  # the key `in`
    through: Said | None = None
    filled_by: tuple[Said, ...] = ()
    emptied_by: tuple[Said, ...] = ()
    guards: tuple[Said, ...] = ()
