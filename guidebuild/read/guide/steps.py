"""Sections under a stage into steps with their methods."""

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from typing import Any, TypeAlias

from guidebuild.device.quantity import Quantity
from guidebuild.guide.prose import Picture
from guidebuild.guide.step import Fork, Item, Method, Step
from guidebuild.read.faults import repeated_key, wrong_type
from guidebuild.read.guide.allow import allows
from guidebuild.read.guide.block import HEADS, Blocks, head, items, name_of
from guidebuild.read.guide.pieces import Break, Fence
from guidebuild.read.guide.section import Section
from guidebuild.read.guide.slug import slug
from guidebuild.read.markdown.runs import Image
from guidebuild.read.shape.entry import Entry
from guidebuild.source.span import Span

Find: TypeAlias = Callable[[Image], Picture | None]  # a picture with its path, or None (and told)


@dataclass(slots=True)
class Filled:
    """What stands in one section: its flow, and after a `***` line what belongs to the step again."""

    items: list[Item] = field(default_factory=list)
    after: list[Item] = field(default_factory=list)
    head: Entry | None = None


def filled(section: Section, level: str, blocks: Blocks, find: Find) -> Filled:
    """Read the pieces of a section; `level` is the head that may stand in it: stage, step, method."""
    found = Filled()
    into = found.items
    for piece in section.pieces:
        if isinstance(piece, Break):
            into = found.after if level == "method" else into
        elif isinstance(piece, Image):
            picture = find(piece)
            into += [picture] if picture else []
        elif isinstance(piece, Fence):
            _fence(piece, level, found, into, blocks)
        else:
            into.append(piece)
    return found


def _fence(fence: Fence, level: str, found: Filled, into: list[Item], blocks: Blocks) -> None:
    name = name_of(fence, blocks.report)
    if name is None:
        return
    if name not in HEADS:
        into.extend(items(fence, name, blocks))
    elif name != level:
        blocks.report.tell(
            wrong_type,
            fence.name.span,
            what=f"a `{name}` block",
            wanted=f"stand under the heading of a {name}",
            found=f", not under that of a {level}",
            do=f"move it, or write a `{level}` block" if level else "move it",
        )
    elif found.head is not None:
        blocks.report.tell(repeated_key, fence.name.span, key=name)
    else:
        found.head = head(fence, name, blocks)


def step(sections: list[Section], blocks: Blocks, find: Find) -> Step:
    """A step out of its own section and those of its methods."""
    first = filled(sections[0], "step", blocks, find)
    heading = sections[0].heading
    assert heading is not None  # a step begins with its heading
    flow: list[Item | Fork] = list(first.items)
    methods: list[Method] = []
    for section in sections[1:]:
        made = filled(section, "method", blocks, find)
        methods.append(_method(section, made, blocks))
        if made.after:
            flow += [Fork(tuple(methods), methods[0].span), *made.after]
            methods = []
    if methods:
        flow.append(Fork(tuple(methods), methods[0].span))
    span = heading.title.span
    body = Span(span.source, heading.line.start, max(section.end for section in sections))
    made_step = Step(
        id=slug(heading.title.text),
        title=heading.title,
        flow=tuple(flow),
        span=span,
        body=body,
        file=span.source.path,
    )
    return _with_head(made_step, first.head, blocks)


def _with_head(made: Step, entry: Entry | None, blocks: Blocks) -> Step:
    if entry is None:
        return made
    blocks.allows += allows(entry, made.body)
    id_ = entry.said("id")
    return replace(
        made,
        id=id_.text if id_ else made.id,
        when=entry.get("when", None),
        minutes=_minutes(entry.get("minutes", None)),
        people=entry.get("people", None),
        optional=entry.get("optional", False),
        same_as=entry.said("same-as"),
    )


def _minutes(said: Quantity | None) -> Quantity | None:
    """A bare number counts minutes."""
    return replace(said, unit="min") if said is not None and not said.unit else said


def _method(section: Section, made: Filled, blocks: Blocks) -> Method:
    heading = section.heading
    assert heading is not None  # a method begins with its heading
    span = heading.title.span
    when: Any = None
    if made.head is not None:
        when = made.head.get("when", None)
        blocks.allows += allows(made.head, Span(span.source, heading.line.start, section.end))
    return Method(heading.title, when, tuple(made.items), span)
