"""A plug is pulled while it is fed, or a source while the device is on.

A plug that breaks a current draws a spark at its contacts and can feed one rail of a board through
another. Data is lost where a source goes while the device writes. The usual cause: the battery plug
is pulled after the others, or not at all. What is fed: whatever a chain of closed plugs and fitted
parts joins to a source that is in.

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

MESSAGE = "{thing} {is} pulled while {cause}"

HELP = (
    "isolate the source first (pull its plug before, push it home after), or switch the device off"
)


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.DEAD):
        move = mistake.move
        if move.verb is Verb.DISCONNECT:
            there = put_there(proof, mistake.blames, move, mistake.where)
            yield mistake.hit(proof, there, cause=_cause(proof, mistake.blames))


def _cause(proof: Proof, blames: tuple[str, ...]) -> str:
    plugs = [key for key in blames if key != POWER]
    return f"{named(proof, plugs)} still feeds it" if plugs else "the power is on"
