"""A guard is closed or filled only when all that it guards is in, and filled only with its drain in."""

from guidebuild.device.acts import CLOSING, Verb
from guidebuild.device.states import Kind
from guidebuild.device.things import Store, Thing
from guidebuild.proof.asking import Asking, Lack, lack_of
from guidebuild.proof.bench import Bench
from guidebuild.proof.plain import NOT_IN


def asked_of(kind: Kind, verb: Verb) -> bool:
    """Closing a link, filling a store."""
    return verb is Verb.RESTORE or (verb in CLOSING and kind is not Kind.PART)


def may_fail(bench: Bench, verb: Verb, thing: Thing) -> bool:
    """A store may have a drain; a link must guard something."""
    return isinstance(thing, Store) or bool(bench.layout.guarding.named(thing.key))


def shut(ask: Asking) -> Lack | None:
    """What is surely here and surely not in is to blame."""
    scene = ask.scene
    asked = scene.layout.guarding.named(ask.key)
    thing = ask.thing
    if isinstance(thing, Store) and thing.through and ask.verb is Verb.RESTORE:
        asked = asked + scene.layout.presence.of([thing.through])
    blames: dict[str, int] = {}
    for key, there in asked:
        bits = scene.both(scene.both(ask.where, there), scene.surely(key, NOT_IN))
        if bits:
            blames[key] = blames.get(key, 0) | bits
    return lack_of(blames) if blames else None
