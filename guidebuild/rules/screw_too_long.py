"""The screw reaches deeper than its thread.

The screw stands on the bottom of its hole: the torque is reached, the head holds nothing, and the
part above is loose from the first day. Or it comes out on the other side, into what lies there.

Source: common practice, no source ("in no case shall the screw bottom out in the tapped hole" stands
in workmanship requirements that were read in translation only). Lengths by ISO 225: of countersunk
screws overall, of others under the head.
"""

from collections.abc import Iterator

from guidebuild.device.units import millimetres
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.cases import values
from guidebuild.proof.questions.once import once
from guidebuild.proof.questions.screws_used import Driven, screws_used
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "`{screw}` reaches {reach} mm into a thread of {depth} mm"

HELP = "correct the length, `grip` or `thread-depth` in the record; one of the three can't be right"


def check(proof: Proof) -> Iterator[Hit]:
    yield from once(hit for one in screws_used(proof) for hit in _too_long(proof, one))


def _too_long(proof: Proof, one: Driven) -> Iterator[Hit]:
    if one.screw.length is None or one.screw.head == "set":
        return
    for depth, deep in values(proof, one.hole.thread_depth, one.where):
        for grip, where in values(proof, one.hole.grip, deep):
            room, held = millimetres(depth), millimetres(grip)
            if room is None or held is None or one.screw.length - held <= room:
                continue
            words = {
                "screw": one.screw.text,
                "reach": f"{(one.screw.length - held).normalize():f}",
                "depth": f"{room.normalize():f}",
            }
            related = (Related(depth.span, "the depth"), Related(grip.span, "what it holds"))
            yield Hit(one.screw.span or one.hole.span, words, related, where)
