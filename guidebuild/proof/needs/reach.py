"""A hand gets at it: nothing that it lies behind is fitted, in the body in which it is worked."""

from guidebuild.device.acts import REPLACING, Verb
from guidebuild.device.states import Kind
from guidebuild.device.things import Store, Thing
from guidebuild.proof.asking import Asking, Lack, lack_of
from guidebuild.proof.bench import Bench
from guidebuild.proof.bodies import all_surely
from guidebuild.proof.plain import IN, LEFT
from guidebuild.proof.scene import Scene
from guidebuild.proof.watch import Watched


def asked_of(kind: Kind, verb: Verb) -> bool:
    """All work, but for what is renewed on the bench and reached there."""
    return verb not in REPLACING and kind is not Kind.POWER


def watched(bench: Bench, verb: Verb, thing: Thing) -> Watched:
    """What may hide it."""
    places = _worked_at(bench, verb, thing)
    return [(cover.part, IN) for key, _ in places for cover in bench.layout.covers.of(key)]


def reach(ask: Asking) -> Lack | None:
    """What is left on the old unit may be hidden by what is left there."""
    blames: dict[str, int] = {}
    for key, where in _worked_at(ask.scene.bench, ask.verb, ask.thing):
        _join(blames, hidden(ask.scene, key, ask.scene.both(ask.usual, where)))
        if ask.left:
            _join(blames, hidden(ask.scene, key, ask.left & where, LEFT))
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


def _join(blames: dict[str, int], more: dict[str, int]) -> None:
    for key, where in more.items():
        blames[key] = blames.get(key, 0) | where


def _worked_at(bench: Bench, verb: Verb, thing: Thing) -> list[tuple[str, int]]:
    """A store with a drain is emptied at the drain, where that is there; not where the store is."""
    everywhere = bench.cells.everywhere
    if isinstance(thing, Store) and thing.through is not None and verb is Verb.RELEASE:
        places = bench.layout.presence.of([thing.through])
        rest = everywhere
        for _, there in places:
            rest ^= rest & there
        return [*places, (thing.key, rest)] if rest else places
    return [(thing.key, everywhere)]
