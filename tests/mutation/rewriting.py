"""A guide with some of its acts replaced by others."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from typing import TypeVar

from guidebuild.guide.blocks.act import Act
from guidebuild.guide.guide import Guide
from guidebuild.guide.step import Fork, Item, Step

Acts = Mapping[int, Sequence[Act]]  # by the identity of the act that they stand for
T = TypeVar("T", Item, Item | Fork)


def rewritten(guide: Guide, acts: Acts) -> Guide:
    """The same guide, but for these acts."""
    stages = tuple(
        replace(stage, steps=tuple(_step(step, acts) for step in stage.steps))
        for stage in guide.stages
    )
    return replace(guide, stages=stages)


def _step(step: Step, acts: Acts) -> Step:
    flow: list[Item | Fork] = []
    for item in step.flow:
        if isinstance(item, Fork):
            methods = (replace(one, items=tuple(_items(one.items, acts))) for one in item.methods)
            flow.append(replace(item, methods=tuple(methods)))
        else:
            flow += _items([item], acts)
    return replace(step, flow=tuple(flow))


def _items(items: Iterable[Item], acts: Acts) -> list[Item]:
    found: list[Item] = []
    for item in items:
        found += acts.get(id(item), [item]) if isinstance(item, Act) else [item]
    return found
