"""A step, stage or method has a condition that can never hold.

It is written, translated and paid for, and no reader will ever see it; or it was needed, and its
condition is wrong.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.condition import Condition, leaves
from guidebuild.guide.step import Fork, Step
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category
from guidebuild.source.span import Span

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{what} is never shown: its condition can't hold here"

HELP = "correct the condition, or drop what it stands on"


def check(proof: Proof) -> Iterator[Hit]:
    everywhere = proof.configurations.everywhere
    for stage in proof.guide.stages:
        around = proof.configurations.bits(stage.when) & everywhere
        if stage.when is not None and not around:
            yield _hit(stage.when, f'the stage "{stage.title}"')
            continue
        for step in stage.steps:
            yield from _in_step(proof, step, around)


def _in_step(proof: Proof, step: Step, around: int) -> Iterator[Hit]:
    here = proof.configurations.bits(step.when) & around
    if step.when is not None and not here:
        yield _hit(step.when, f'the step "{step.title}"')
        return
    for fork in step.flow:
        if isinstance(fork, Fork):
            for method in fork.methods:
                if method.when is not None and not proof.configurations.bits(method.when) & here:
                    yield _hit(method.when, f'the method "{method.title}"')


def _hit(condition: Condition | None, what: str) -> Hit:
    parts = leaves(condition)
    first, last = parts[0].span, parts[-1].span
    return Hit(Span(first.source, first.start, last.end), {"what": what})
