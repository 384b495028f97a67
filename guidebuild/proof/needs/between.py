"""What lies between two parts is renewed while they are apart."""

from guidebuild.device.acts import Verb
from guidebuild.device.ends import LYING_BETWEEN
from guidebuild.device.states import Kind
from guidebuild.device.things import Joint, Thing
from guidebuild.proof.asking import Asking, Lack, lack
from guidebuild.proof.bench import Bench
from guidebuild.proof.bodies import one_body
from guidebuild.proof.watch import ALWAYS, Watched


def asked_of(kind: Kind, verb: Verb) -> bool:
    """Renewing a joint."""
    return kind is Kind.JOINT and verb is Verb.RENEW


def watched(bench: Bench, verb: Verb, thing: Thing) -> Watched:
    """A seal, an adhesive, a film is always asked."""
    return ALWAYS if isinstance(thing, Joint) and thing.joint in LYING_BETWEEN else ()


def between(ask: Asking) -> Lack | None:
    """The parts that are together already are to blame."""
    joint, scene = ask.thing, ask.scene
    assert isinstance(joint, Joint)
    seats = scene.layout.ends.seats(joint)
    together, _ = one_body(scene, seats, ask.where)
    if not together:
        return None
    blames: dict[str, int] = {}
    for path in seats:
        for part in path.parts:
            blames[part] = blames.get(part, 0) | (together & path.where)
    return lack(together, {part: bits for part, bits in blames.items() if bits})
