"""The device is switched on while nothing feeds it.

No battery plug and no mains plug is in, so nothing happens at the key. The reader who has just put
a device together takes that for a fault of the repair, opens it again, and looks for a mistake that
is not there.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import taken_away
from guidebuild.proof.questions.joined import named, unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "the power is switched on and no source is connected"

HELP = "reconnect a source ({blame}) before this act"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.SOURCE):
        sources = [plug.key for plug in proof.device.connectors if plug.source]
        there = taken_away(proof, sources, mistake.first.doing, mistake.where)
        yield mistake.hit(proof, there, blame=named(proof, sources))
