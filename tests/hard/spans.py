"""Every place in a value: where it lies, and that children lie inside parents and siblings apart."""

from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass
from itertools import pairwise
from typing import Any

from guidebuild.guide.blocks.act import Act
from guidebuild.guide.content import Content
from guidebuild.guide.guide import Guide
from guidebuild.guide.prose import Paragraph
from guidebuild.guide.step import Fork, Step
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source


def spans(value: Any) -> Iterator[Span]:
    """All spans in a value, however deep."""
    if isinstance(value, Span):
        yield value
    elif isinstance(value, Mapping):
        for one in value.values():
            yield from spans(one)
    elif isinstance(value, tuple | list | frozenset):
        for one in value:
            yield from spans(one)
    elif is_dataclass(value) and not isinstance(value, Source):
        for field in fields(value):
            yield from spans(getattr(value, field.name))


def inside(child: Span, parent: Span) -> bool:
    """Whether one lies in the other, in the same file."""
    return child.source is parent.source and parent.start <= child.start <= child.end <= parent.end


def apart(several: list[Span]) -> bool:
    """Whether they follow each other without touching each other's letters."""
    return all(first.end <= second.start for first, second in pairwise(several))


def in_their_files(content: Content) -> None:
    """Every span of everything read."""
    for span in spans(
        (content.guides, content.devices, content.kits, content.tools, content.terms)
    ):
        assert 0 <= span.start <= span.end <= len(span.source.text)


def in_order(guide: Guide) -> None:
    """Steps, their flow, acts and runs: inside what they stand in, and one after the other."""
    for stage in guide.stages:
        own = [step for step in stage.steps if step.file == guide.path]
        assert apart([step.body for step in own])
        for step in stage.steps:
            _step(step)


def _step(step: Step) -> None:
    assert inside(step.span, step.body)
    items = []
    for item in step.flow:
        items += (
            [one for way in item.methods for one in way.items] if isinstance(item, Fork) else [item]
        )
    assert apart([one.span for one in items])
    for one in items:
        assert inside(one.span, step.body)
        if isinstance(one, Act):
            assert inside(one.span, one.block)
            for said in (one.verb_span, *(target.span for target in one.targets)):
                assert inside(said, one.span)
        if isinstance(one, Paragraph):
            _paragraph(one)


def _paragraph(paragraph: Paragraph) -> None:
    assert apart([run.span for run in paragraph.runs])
    for run in paragraph.runs:
        assert inside(run.span, paragraph.span)
        if len(run.text) == run.span.end - run.span.start:
            shown = (
                run.span.text.replace("\n", " ")
                .replace("\r", " ")
                .replace("\0", "\N{REPLACEMENT CHARACTER}")
            )
            assert run.text in (shown, "\n")


def as_written(said: Said) -> bool:
    """Whether a plain word stands where it says that it does."""
    return said.span.text.strip("'\"") == said.text
