"""A guard is closed or filled only when all that it guards is in, and filled only with its drain in."""

from guidebuild.device.acts import CLOSING, Verb
from guidebuild.device.states import Kind
from guidebuild.device.things import Store, Thing
from guidebuild.proof.asking import Asking, Lack, lack_of
from guidebuild.proof.bench import Bench
from guidebuild.proof.plain import NOT_IN
from guidebuild.proof.watch import Watched


def asked_of(kind: Kind, verb: Verb) -> bool:
    """Closing a link, filling a store."""
    return verb is Verb.RESTORE or (verb in CLOSING and kind is not Kind.PART)


def watched(bench: Bench, verb: Verb, thing: Thing) -> Watched:
    """What it guards; the drain of a store."""
    return [(key, NOT_IN) for key, _ in _asked(bench, verb, thing)]


def shut(ask: Asking) -> Lack | None:
    """What is surely here and surely not in is to blame."""
    scene = ask.scene
    blames: dict[str, int] = {}
    for key, there in _asked(scene.bench, ask.verb, ask.thing):
        bits = scene.both(scene.both(ask.where, there), scene.surely(key, NOT_IN))
        if bits:
            blames[key] = blames.get(key, 0) | bits
    return lack_of(blames) if blames else None


def _asked(bench: Bench, verb: Verb, thing: Thing) -> list[tuple[str, int]]:
    asked = bench.layout.guarding.named(thing.key)
    if isinstance(thing, Store) and thing.through and verb is Verb.RESTORE:
        return asked + bench.layout.presence.of([thing.through])
    return asked
