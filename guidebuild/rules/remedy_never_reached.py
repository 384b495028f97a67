"""A remedy is written, and no check leads to it.

The work of writing it is lost, and the reader whose test fails is not told of it. Mostly the
function's name or the stage's id changed.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.guide.blocks.check import Check
from guidebuild.guide.inside import checks, steps_with
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.ways_on import remedies_of
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = 'no check leads to the remedy "{stage}"'

HELP = "name it in a check (`if-not:`), or let it be `for` a function that a check tests"


def check(proof: Proof) -> Iterator[Hit]:
    reached = {
        stage.id
        for step in steps_with(proof.guide, Check)
        for check in checks(step)
        for stage in remedies_of(proof.guide, check)
    }
    for stage in proof.guide.stages:
        if stage.remedy is not None and stage.id not in reached:
            yield Hit(stage.remedy.span, {"stage": stage.title.text})
