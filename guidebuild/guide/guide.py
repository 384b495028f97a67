"""A whole guide as read: front matter, stages, and the kits and options that it draws in."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal

from guidebuild.device.condition import Condition
from guidebuild.device.kit import Kit
from guidebuild.device.option import Option
from guidebuild.device.states import State
from guidebuild.guide.prose import Picture, Prose
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Step
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Goal:
    """`verb`: replace, inspect, clean, adjust, remove, add; `parts`: what it is about."""

    verb: str
    parts: tuple[Said, ...]
    span: Span = field(compare=False)


@dataclass(frozen=True, slots=True)
class Tried:
    """One trial of the guide on a real unit."""

    serial: Said
    date: Said
    by: Said


@dataclass(frozen=True, slots=True)
class Before:
    """What must be true before; None is `not said`, the word `none` is said."""

    data: Said | None = None
    charge_most: Decimal | None = None  # per cent
    charge_said: Said | None = None
    people: int | None = None
    bench: tuple[Said, ...] | None = None
    span: Span | None = field(default=None, compare=False)


@dataclass(frozen=True, slots=True)
class Allow:
    """One rule silenced for one reason, in what `over` covers (a block, or the whole guide)."""

    rule: Said
    reason: Said
    over: Span = field(compare=False)


@dataclass(frozen=True, slots=True)
class KitUse:
    """A kit that the guide names; `option` is the id of the option that its forms are (None: one form)."""

    kit: Kit
    option: str | None
    named: Span = field(compare=False)


@dataclass(frozen=True, slots=True, kw_only=True)
class Guide:
    """`path`: the guide's file in the content folder; `id`: that without folder and ending.

    `options`: all that can be asked (device, kits, guide, model), in that order. `stages` are in document
    order, remedies among them. `starts` and `ends` map ids as written to states.
    """

    id: str
    path: str
    span: Span = field(compare=False)
    title: Said
    number: Said | None = None
    issue: Said | None = None
    status: Said | None = None
    language: str = "en"
    tried_on: tuple[Tried, ...] = ()
    devices: tuple[Said, ...] = ()
    goal: Goal
    kits: tuple[KitUse, ...] = ()
    skill: Said | None = None
    only: Said | None = None
    before: Before = Before()
    after: tuple[Said, ...] = ()
    options: tuple[Option, ...] = ()
    exclude: tuple[Condition, ...] = ()
    starts: Mapping[str, State] = field(default_factory=dict)
    ends: Mapping[str, State] = field(default_factory=dict)
    state_spans: Mapping[str, Span] = field(default_factory=dict, compare=False)
    allows: tuple[Allow, ...] = ()
    video: Said | None = None
    intro: tuple[Prose, ...] = ()
    pictures: tuple[Picture, ...] = ()  # of the introduction
    stages: tuple[Stage, ...] = ()

    @property
    def steps(self) -> tuple[Step, ...]:
        """All steps in document order, those of remedies among them."""
        return tuple(step for stage in self.stages for step in stage.steps)
