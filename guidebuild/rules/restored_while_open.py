"""Energy comes back while what it guards is still open: plugged in with the housing off, filled with the drain out.

The device is live with bare parts in reach of the hand, or the oil runs over the bench. The order
back is the other way round: first everything in its place, then the plug, the fill, the charge.

Source: 29 CFR 1910.147(e), before power returns the area is inspected and components are intact; as
restated in public notes, partly from memory.
"""

from collections.abc import Iterator

from guidebuild.device.naming import done
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import taken_away
from guidebuild.proof.questions.joined import unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SAFETY)

MESSAGE = "{thing} {is} {done} while {blame} {blame_is} not back in place"

HELP = "put {blame} back in place before this act"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.SHUT):
        move = mistake.move
        there = taken_away(proof, mistake.blames, move, mistake.where)
        yield mistake.hit(proof, there, done=done(move.verb, proof.device.things[move.thing]))
