"""What lies between two parts is renewed while they are apart."""

from guidebuild.device.ends import LYING_BETWEEN
from guidebuild.device.things import Joint
from guidebuild.proof.asking import Asking, Lack, lack
from guidebuild.proof.bodies import one_body


def between(ask: Asking) -> Lack | None:
    """The parts that are together already are to blame."""
    joint, scene = ask.thing, ask.scene
    assert isinstance(joint, Joint)
    if joint.joint not in LYING_BETWEEN:
        return None
    seats = scene.layout.ends.seats(joint)
    together, _ = one_body(scene, seats, ask.where)
    if not together:
        return None
    blames: dict[str, int] = {}
    for path in seats:
        for part in path.parts:
            blames[part] = blames.get(part, 0) | (together & path.where)
    return lack(together, {part: bits for part, bits in blames.items() if bits})
