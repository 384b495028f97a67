"""A seal, adhesive or film is renewed after the parts that it lies between came together.

A gasket goes into its groove while the parts are apart. Where the guide fits the part first, the
reader either takes it off again or leaves the old gasket in, and nobody sees it until it leaks.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import put_there
from guidebuild.proof.questions.joined import unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} renewed when {blame} {blame_is} already together"

HELP = "renew {thing} before the part goes on"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.BETWEEN):
        there = put_there(proof, mistake.blames, mistake.first.doing, mistake.where)
        yield mistake.hit(proof, there)
