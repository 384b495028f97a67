"""No guard of it is in: the charge is out of the capacitor, the plug out of the wall, the earth tag still on."""

from guidebuild.device.acts import REPLACING, Verb
from guidebuild.device.states import Kind
from guidebuild.device.things import Thing
from guidebuild.proof.asking import Asking, Lack, lack_of
from guidebuild.proof.bench import Bench
from guidebuild.proof.plain import IN
from guidebuild.proof.watch import Watched


def asked_of(kind: Kind, verb: Verb) -> bool:
    """All work; renewing on the bench is none."""
    return verb not in REPLACING


def watched(bench: Bench, verb: Verb, thing: Thing) -> Watched:
    """What guards it."""
    return [(guard, IN) for guard, _ in bench.layout.guarding.over(thing.key)]


def safe(ask: Asking) -> Lack | None:
    """Each guard that is surely in is to blame."""
    scene = ask.scene
    blames: dict[str, int] = {}
    for guard, where in scene.layout.guarding.over(ask.key):
        bits = scene.both(scene.both(ask.usual, where), scene.surely(guard, IN))
        if bits:
            blames[guard] = blames.get(guard, 0) | bits
    return lack_of(blames) if blames else None
