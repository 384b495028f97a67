"""The record says something that no device can be.

Two parts that lie behind each other can never come off; a part on a host that is never there can
never be fitted; a kit can't bring a bar that has nothing to sit on. A proof of such a record proves
nothing: it is silent where it should speak. So the record is looked at first.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.impossible import impossible
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "this can't be: {what}"

HELP = "look at the device itself and correct the record (or the kit)"


def check(proof: Proof) -> Iterator[Hit]:
    for one in impossible(proof):
        yield Hit(one.span, {"what": one.what}, (), one.where)
