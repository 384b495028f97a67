"""A hand gets at it: nothing that it lies behind is fitted, in the body in which it is worked."""

from guidebuild.device.acts import REPLACING, Verb
from guidebuild.device.things import Store, Thing
from guidebuild.proof.asking import Asking, Lack, lack_of
from guidebuild.proof.bench import Bench
from guidebuild.proof.bodies import all_surely
from guidebuild.proof.plain import IN, LEFT
from guidebuild.proof.scene import Scene


def asked_of(bench: Bench, verb: Verb, thing: Thing) -> bool:
    """What is renewed on the bench is reached there."""
    if verb in REPLACING:
        return False
    return any(bench.layout.covers.of(key) for key in _worked_at(bench, verb, thing))


def reach(ask: Asking) -> Lack | None:
    """What is left on the old unit may be hidden by what is left there."""
    blames: dict[str, int] = {}
    for key in _worked_at(ask.scene.bench, ask.verb, ask.thing):
        blames |= hidden(ask.scene, key, ask.usual)
        if ask.left:
            blames |= hidden(ask.scene, key, ask.left, LEFT)
    return lack_of(blames) if blames else None


def hidden(scene: Scene, key: str, where: int, fitted: int = IN) -> dict[str, int]:
    """What surely hides a thing, and in which configurations of `where`."""
    found: dict[str, int] = {}
    for cover in scene.layout.covers.of(key):
        bits = scene.both(scene.both(where, cover.path.where), scene.surely(cover.part, fitted))
        bits = all_surely(scene, cover.path.parts, fitted, bits)
        if bits:
            found[cover.part] = found.get(cover.part, 0) | bits
    return found


def _worked_at(bench: Bench, verb: Verb, thing: Thing) -> tuple[str, ...]:
    """A store with a drain is emptied at the drain, not where it is."""
    if isinstance(thing, Store) and thing.through is not None and verb is Verb.RELEASE:
        drains = bench.layout.presence.of([thing.through])
        return tuple(key for key, _ in drains) or (thing.key,)
    return (thing.key,)
