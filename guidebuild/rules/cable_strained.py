"""A part is lifted while its cables are connected, with no support told, or further than they reach.

The cover hangs on its flex while the reader looks for the latch. The flex tears at its solder, not
where it can be seen. Say what holds the part (`support:`), or in the record how far it opens
(`opens-to:`).

Source: common practice, no source.
"""

from collections.abc import Iterator
from functools import reduce
from operator import or_

from guidebuild.device.acts import Verb
from guidebuild.device.naming import subject
from guidebuild.device.states import Kind
from guidebuild.device.things import Part
from guidebuild.guide.blocks.part import PartAct
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof, Walked
from guidebuild.proof.questions.history import by_verb, place
from guidebuild.proof.questions.joined import shown
from guidebuild.proof.questions.moment import links_across
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "{thing} {is} lifted while {blame} still {holds} it: {why}"

HELP = "say what holds it (`support:`), open it less far, or disconnect {blame} first"


def check(proof: Proof) -> Iterator[Hit]:
    for one in by_verb(proof).get(Verb.LIFT, ()):
        if isinstance(one.doing, Move):
            yield from _lifted(proof, one, one.doing)


def _lifted(proof: Proof, one: Walked, move: Move) -> Iterator[Hit]:
    part, act = proof.device.part(move.thing), move.act
    assert isinstance(act, PartAct)
    why = _strain(part, act)
    cables = {
        key: bits & one.where
        for key, bits in links_across(proof, one.before, part.key).items()
        if bits & one.where and proof.device.things[key].kind is Kind.CONNECTOR
    }
    if why and cables:
        blame = subject(proof.device, cables)
        words = subject(proof.device, [part.key]) | {
            "blame": blame["thing"],
            "holds": "holds" if blame["is"] == "is" else "hold",
            "why": why,
        }
        yield Hit(place(move), words, (), reduce(or_, cables.values()), shown(proof, one.step))


def _strain(part: Part, act: PartAct) -> str:
    if act.support is None and act.angle is None and part.opens_to is None:
        return "nothing says what supports it"
    if act.angle is not None and part.opens_to is not None and act.angle.value > part.opens_to:
        return f"it opens to {part.opens_to} degrees only"
    return ""
