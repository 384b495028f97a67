"""A step and its methods."""

from dataclasses import dataclass, field
from typing import TypeAlias

from guidebuild.device.condition import Condition
from guidebuild.device.quantity import Quantity
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.blocks.points import Points
from guidebuild.guide.blocks.use import Use
from guidebuild.guide.blocks.video import Video
from guidebuild.guide.blocks.wait import Wait
from guidebuild.guide.prose import Bullets, Paragraph, Picture, Quote
from guidebuild.source.said import Said
from guidebuild.source.span import Span

Item: TypeAlias = (
    Act | Caution | Check | Wait | Use | Points | Video | Picture | Paragraph | Bullets | Quote
)


@dataclass(frozen=True, slots=True)
class Method:
    """One of several ways to do a step; its title says what the reader sees."""

    title: Said
    when: Condition | None
    items: tuple[Item, ...]
    span: Span = field(compare=False)


@dataclass(frozen=True, slots=True)
class Fork:
    """Methods that start from one state and meet after it. `span`: its first method's heading."""

    methods: tuple[Method, ...]
    span: Span = field(compare=False)


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """`id` is unique in the guide as read. `flow`: what happens, in document order.

    `same_as` is the id of the step whose acts are done again; its items are not copied into `flow`.
    `span` is the heading's text, `body` from the heading to the step's last non-blank character.
    """

    id: str
    title: Said
    when: Condition | None = None
    minutes: Quantity | None = None
    people: int | None = None
    optional: bool = False
    same_as: Said | None = None
    flow: tuple[Item | Fork, ...] = ()
    span: Span = field(compare=False)
    body: Span = field(compare=False)
    file: str = ""  # the content file it was read from (a shared stage's own file)
