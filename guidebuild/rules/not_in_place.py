"""Something is put back before what it must meet is there.

A screw needs its hole and the part that it clamps, a plug its socket, a part the part that carries
it. Where that is still off, the act can't be done as written, and a reader who follows the order
has a part in the hand with no place to put it.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.naming import done
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import taken_away
from guidebuild.proof.questions.joined import unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} {done} while {blame} {blame_is} not in place"

HELP = "put {blame} in place before this act, or move this act after that"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.MET):
        move = mistake.move
        there = taken_away(proof, mistake.blames, move, mistake.where)
        yield mistake.hit(proof, there, done=done(move.verb, proof.device.things[move.thing]))
