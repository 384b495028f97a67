"""Work goes on inside a device that is switched on.

A tool that slips on a live board ends the board, and a mechanism that starts takes a finger along.
The page says "on" in its tally, and the reader trusts that the guide knows. Told once, where it
begins.

Source: common practice, no source; 29 CFR 1910.333(a)(1), live parts are de-energised before work
unless that is infeasible, as restated in a public digest.
"""

from collections.abc import Iterator
from functools import reduce
from operator import or_

from guidebuild.device.acts import REPLACING
from guidebuild.device.naming import subject
from guidebuild.device.record import POWER
from guidebuild.device.states import State
from guidebuild.device.things import Connector, Store
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Move, Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import place, put_there, walked
from guidebuild.proof.questions.joined import shown
from guidebuild.proof.questions.standing import has_sources
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "{thing} {is} worked on while the device is switched on"

HELP = "switch the device off before this act, or say in the front matter that it starts so: `starts: {{device: off}}`"


def check(proof: Proof) -> Iterator[Hit]:
    if not has_sources(proof.device):
        return
    told = _told_at_a_plug(proof)
    for one in walked(proof):
        if not isinstance(one.doing, Move):
            continue
        on = one.where & one.before.surely(POWER, State.IN)
        off = one.where ^ on
        told ^= told & off
        if on ^ (on & told) and _is_work(proof, one.doing):
            words = subject(proof.device, [one.doing.thing])
            there = put_there(proof, [POWER], one.doing, on)
            yield Hit(place(one.doing), words, there, on ^ (on & told), shown(proof, one.step))
            told |= on


def _told_at_a_plug(proof: Proof) -> int:
    """Where a source is pulled while the device is on: that says the same, and for certain."""
    live = (one for one in proof.unmet if one.need is Need.DEAD and POWER in one.blames)
    return reduce(or_, (one.where for one in live), 0)


def _is_work(proof: Proof, move: Move) -> bool:
    """Not the switch or a setting, nor what is done on the bench; plugs have rules of their own."""
    thing = proof.device.things[move.thing]
    return not isinstance(thing, Store | Connector) and move.verb not in REPLACING
