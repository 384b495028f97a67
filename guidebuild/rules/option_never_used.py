"""The guide asks a question, and nothing depends on the answer.

Every question costs the reader a look at the device, and a wrong answer a doubt. A question that
decides nothing has lost its use, or a condition was forgotten.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.condition import Condition, leaves
from guidebuild.device.option import Origin
from guidebuild.guide.inside import conditions
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "nothing depends on the option {option}"

HELP = "drop the option, or give the acts that differ a `when:`"


def check(proof: Proof) -> Iterator[Hit]:
    if all(option.origin is not Origin.GUIDE for option in proof.guide.options):
        return
    used = {leaf.option for condition in _conditions(proof) for leaf in leaves(condition)}
    for option in proof.guide.options:
        if option.origin is Origin.GUIDE and option.id not in used:
            yield Hit(option.span, {"option": option.id})


def _conditions(proof: Proof) -> Iterator[Condition | None]:
    """Everything but `exclude`, which only says what can't be."""
    for thing in proof.device.things.values():
        yield thing.when
    for stage in proof.guide.stages:
        yield stage.when
        for step in stage.steps:
            yield step.when
            yield from conditions(step)
