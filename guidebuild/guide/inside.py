"""What stands inside a step, its methods included."""

from collections.abc import Iterator

from guidebuild.device.condition import Condition
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.blocks.points import Points
from guidebuild.guide.guide import Guide
from guidebuild.guide.prose import Bullets, Paragraph, Picture, Quote
from guidebuild.guide.step import Fork, Item, Step


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


def pictures_in(guide: Guide) -> Iterator[Picture]:
    """Every picture that a guide shows, in document order."""
    yield from guide.pictures
    for step in guide.steps:
        yield from (one for one in items(step) if isinstance(one, Picture))
