"""A step offers several methods, and in some unit none of them may be used.

The reader with that unit reads each heading, finds that none is meant, and is on their own. Mostly
a value was added to an option later.

Source: common practice, no source.
"""

from collections.abc import Iterator
from functools import reduce
from operator import or_

from guidebuild.guide.step import Fork
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = 'no method of the step "{step}" applies'

HELP = "add a method for these units, widen the `when:` of one, or let the step itself be shown only where one applies"


def check(proof: Proof) -> Iterator[Hit]:
    for passage in proof.passages:
        for fork in passage.step.flow:
            if isinstance(fork, Fork):
                bits = (proof.configurations.bits(method.when) for method in fork.methods)
                without = passage.shown ^ (passage.shown & reduce(or_, bits))
                if without:
                    words = {"step": passage.step.title.text}
                    yield Hit(fork.span, words, (), without, passage.shown)
