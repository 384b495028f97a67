"""A torque is given in a unit that is none.

`0.3` alone, `3 kg` or `30 N` leave the reader to guess, and the guesses lie a factor of ten apart:
1 cN·m is about 0.1 kgf·cm.

Source: SI brochure; NIST SP 811 appendix B.8 for units outside the SI.
"""

from collections.abc import Iterator

from guidebuild.device.units import amount
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.torques import torques
from guidebuild.source.finding import Category
from guidebuild.source.span import Span

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{unit} is no unit of torque"

HELP = (
    "write N·m, cN·m or mN·m; also known: kgf·cm, lbf·in, lbf·ft, ozf·in and their usual spellings"
)


def check(proof: Proof) -> Iterator[Hit]:
    told: set[Span] = set()
    for asked in torques(proof):
        torque = asked.torque
        if amount(torque, "torque") is None and torque.span not in told:
            told.add(torque.span)
            unit = f"`{torque.unit}`" if torque.unit else "a bare number"
            yield Hit(torque.span, {"unit": unit})
