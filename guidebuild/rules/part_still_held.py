"""A part is taken away while a screw, plug, clip or adhesive still holds it, or holds what rides on it.

The reader pulls, and what gives way is the weakest: the clip, the flex, the board. A single screw
under a label that the guide forgot is the usual way to crack a housing. For lifting, plugs do not
count: the cable is long enough, or the record says how far it opens.

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

MESSAGE = "{thing} {is} still held by {blame}"

HELP = "undo {blame} before this act (or name it in its `undo`)"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.FREE):
        there = put_there(proof, mistake.blames, mistake.first.doing, mistake.where)
        yield mistake.hit(proof, there)
