"""A function is tested while a plug or contact that carries it is open.

The test can only fail. It sends the reader to a remedy for a fault that is none, often to a part
that is then exchanged for nothing.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import taken_away
from guidebuild.proof.questions.joined import unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "this check can only fail: {blame} {blame_is} open"

HELP = "reconnect {blame} before this check"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.CARRIED):
        there = taken_away(proof, mistake.blames, mistake.first.doing, mistake.where)
        yield mistake.hit(proof, there)
