"""A check that needs power comes while the power is off.

Nothing lights up and nothing moves, so the check fails for a reason that is no fault. The reader
then follows the way on for a fault that the device does not have.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.record import POWER
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import taken_away
from guidebuild.proof.questions.joined import unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "this check needs power, and the power is off"

HELP = "switch the device on before this check"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.POWERED):
        there = taken_away(proof, [POWER], mistake.first.doing, mistake.where)
        yield mistake.hit(proof, there)
