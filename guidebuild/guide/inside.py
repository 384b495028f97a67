"""What stands inside a step, its methods included."""

from collections.abc import Iterator, Mapping

from guidebuild.device.condition import Condition
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.blocks.points import Points
from guidebuild.guide.guide import Guide
from guidebuild.guide.prose import Bullets, Paragraph, Picture, Quote
from guidebuild.guide.step import Fork, Item, Step
from guidebuild.source.remembered import remembered


def items(step: Step) -> Iterator[Item]:
    """Everything in document order; of methods one after the other."""
    for one in step.flow:
        if isinstance(one, Fork):
            for method in one.methods:
                yield from method.items
        else:
            yield one


def acts(step: Step) -> Iterator[Act]:
    """The acts that are written in this step (not those that it repeats)."""
    return (one for one in items(step) if isinstance(one, Act))


def checks(step: Step) -> Iterator[Check]:
    """The checks that are written in this step."""
    return (one for one in items(step) if isinstance(one, Check))


def cautions(step: Step) -> Iterator[Caution]:
    """The safety messages that are written in this step."""
    return (one for one in items(step) if isinstance(one, Caution))


def conditions(step: Step) -> Iterator[Condition]:
    """Every condition inside the step: those of its methods and of what they hold; not its own."""
    for one in step.flow:
        if isinstance(one, Fork):
            yield from (method.when for method in one.methods if method.when is not None)
    for item in items(step):
        if not isinstance(item, Points | Paragraph | Bullets | Quote | Picture) and item.when:
            yield item.when


@remembered
def pictures_in(guide: Guide) -> tuple[Picture, ...]:
    """Every picture that a guide shows, in document order."""
    inside = (one for step in steps_with(guide, Picture) for one in items(step))
    return (*guide.pictures, *(one for one in inside if isinstance(one, Picture)))


def steps_with(guide: Guide, kind: type[Item]) -> tuple[Step, ...]:
    """The steps in which something of this class stands (of acts: of just this class), in document order."""
    return _by_kind(guide).get(kind, ())


@remembered
def _by_kind(guide: Guide) -> Mapping[type[Item], tuple[Step, ...]]:
    found: dict[type[Item], dict[int, Step]] = {}
    for step in guide.steps:
        for item in items(step):
            found.setdefault(type(item), {})[id(step)] = step
    return {kind: tuple(steps.values()) for kind, steps in found.items()}
