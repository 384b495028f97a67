"""Too little of the screw is in its thread.

The thread strips at the torque that the guide itself asks for, or some months later. In steel a
screw should engage at least its own diameter, in aluminium one and a half, in plastic two. The
record does not say the material, so only less than one diameter is told.

Source: Bossard F.039 and Roloff/Matek, as restated: at least 1.0 d in steel, 1.5 d in aluminium;
2 to 3 d in plastics (Lincoln, Gomes and Braden, Mechanical Fastening of Plastics).
"""

from collections.abc import Iterator
from decimal import Decimal

from guidebuild.device.quantity import Quantity
from guidebuild.device.units import millimetres
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.cases import values
from guidebuild.proof.questions.once import once
from guidebuild.proof.questions.screws_used import Driven, screws_used
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "`{screw}` engages {engaged} mm of thread, less than its diameter of {diameter} mm"

HELP = (
    "check the length and `grip` in the record, or say in the guide why so little thread is enough"
)


def check(proof: Proof) -> Iterator[Hit]:
    yield from once(hit for one in screws_used(proof) for hit in _too_short(proof, one))


def _too_short(proof: Proof, one: Driven) -> Iterator[Hit]:
    length, diameter = one.screw.length, one.screw.diameter
    if length is None or diameter is None or one.screw.head == "set":
        return
    for grip, where in values(proof, one.hole.grip, one.where):
        held = millimetres(grip)
        engaged = None if held is None else _engaged(proof, one, length - held, where)
        if engaged is None or engaged >= diameter:
            continue
        words = {
            "screw": one.screw.text,
            "engaged": f"{max(engaged, Decimal(0)).normalize():f}",
            "diameter": f"{diameter.normalize():f}",
        }
        yield Hit(one.screw.span or one.hole.span, words, (_told(grip),), where)


def _engaged(proof: Proof, one: Driven, reach: Decimal, where: int) -> Decimal:
    """As deep as it reaches, but no deeper than the thread is."""
    depths = [millimetres(depth) for depth, _ in values(proof, one.hole.thread_depth, where)]
    return min([reach, *(depth for depth in depths if depth is not None)])


def _told(grip: Quantity) -> Related:
    return Related(grip.span, "the thickness that it holds")
