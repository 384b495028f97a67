"""A check says what to expect, and nothing says what to do when it is otherwise.

The reader whose lamp does not light is alone with an open device. A remedy, a list of what may be
seen, or a plain "stop" with whom to ask is part of the check.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.guide.blocks.check import Check
from guidebuild.guide.inside import checks, steps_with
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.ways_on import remedies_of
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "nothing says what to do when this is not so"

HELP = (
    "add `if-not:` or `faults:` with a remedy, or `stop:` with what to do; "
    "or write a remedy that is `for` what it tests"
)


def check(proof: Proof) -> Iterator[Hit]:
    with_checks = {step.id for step in steps_with(proof.guide, Check)}
    for passage in proof.passages:
        if not passage.shown or passage.step.id not in with_checks:
            continue
        for check in checks(passage.step):
            if check.stop is None and not remedies_of(proof.guide, check):
                yield Hit(check.expect.span, {}, (), passage.shown, passage.shown)
