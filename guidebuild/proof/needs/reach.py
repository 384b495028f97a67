"""A hand gets at it: nothing that it lies behind is fitted, in the body in which it is worked."""

from guidebuild.device.acts import Verb
from guidebuild.device.things import Store
from guidebuild.proof.asking import Asking, Lack, lack_of
from guidebuild.proof.bodies import all_surely
from guidebuild.proof.plain import IN, LEFT
from guidebuild.proof.scene import Scene


def reach(ask: Asking) -> Lack | None:
    """What is left on the old unit may be hidden by what is left there."""
    blames: dict[str, int] = {}
    for key in _worked_at(ask):
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


def _worked_at(ask: Asking) -> tuple[str, ...]:
    """A store with a drain is emptied at the drain, not where it is."""
    thing = ask.thing
    if isinstance(thing, Store) and thing.through is not None and ask.move.verb is Verb.RELEASE:
        drains = ask.scene.layout.presence.of([thing.through])
        return tuple(key for key, _ in drains) or (thing.key,)
    return (thing.key,)
