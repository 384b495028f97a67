"""Four or more screws close a seal, and nobody says in which order.

Tightened one after the other round the edge, the first side pinches the seal and the last one
never meets it. Across the corners, in two rounds, the part comes down level.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.record import Device, Group
from guidebuild.device.things import Hole
from guidebuild.guide.blocks.fastener import FastenerAct
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import place
from guidebuild.proof.questions.screws_used import TIGHTENED, driven
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "{count} screws {group} close the seal {seal} in no told order"

HELP = "give the group `sequence: cross`, or `sequence: listed` with the holes in their order"

_MANY = 4


def check(proof: Proof) -> Iterator[Hit]:
    told: set[str] = set()
    for one in driven(proof, TIGHTENED):
        group = proof.device.groups.get(one.hole.group)
        act = one.move.act
        ordered = isinstance(act, FastenerAct) and act.sequence is not None
        if group is None or group.id in told or group.sequence or ordered:
            continue
        seal = _seal(proof.device, one.hole) if len(group.holes) >= _MANY else None
        if seal is not None:
            told.add(group.id)
            related = (Related(place(one.move), "tightened here"),)
            yield Hit(group.span, _words(group, seal), related)


def _words(group: Group, seal: str) -> dict[str, object]:
    return {"count": len(group.holes), "group": group.id, "seal": seal}


def _seal(device: Device, hole: Hole) -> str | None:
    """The seal between the two parts that the screw draws together."""
    ends = {end.text for end in hole.ends}
    for joint in device.joints:
        if joint.joint == "seal" and {end.text for end in joint.ends} <= ends:
            return joint.id
    return None
