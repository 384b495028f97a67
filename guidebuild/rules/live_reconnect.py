"""A plug is pushed home while it is fed, or a source while the device is on.

Contacts touch in any order, so a live plug can put the supply on a signal line for a moment; that
is enough for a board or a display. The usual cause: the battery plug goes in before the others.
What is fed: whatever a chain of closed plugs and fitted parts joins to a source that is in.

Source: common practice, no source: the source is the first plug out and the last plug in.
"""

from collections.abc import Iterator

from guidebuild.device.acts import Verb
from guidebuild.device.record import POWER
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import put_there
from guidebuild.proof.questions.joined import named, unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SAFETY)

MESSAGE = "{thing} {is} pushed home while {cause}"

HELP = "push this plug home before the source is connected, or switch the device off first"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.DEAD):
        move = mistake.move
        if move.verb is Verb.RECONNECT:
            there = put_there(proof, mistake.blames, move, mistake.where)
            yield mistake.hit(proof, there, cause=_cause(proof, mistake.blames))


def _cause(proof: Proof, blames: tuple[str, ...]) -> str:
    plugs = [key for key in blames if key != POWER]
    return f"{named(proof, plugs)} still feeds it" if plugs else "the power is on"
