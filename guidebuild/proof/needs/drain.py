"""A store is emptied only with its drain out, and with nothing filling it again."""

from guidebuild.device.acts import Verb
from guidebuild.device.ends import holds_while
from guidebuild.device.states import Kind
from guidebuild.device.things import Link, Store, Thing
from guidebuild.proof.asking import Asking, Lack, lack_of
from guidebuild.proof.bench import Bench
from guidebuild.proof.plain import HOLDING, IN
from guidebuild.proof.watch import Watched


def asked_of(kind: Kind, verb: Verb) -> bool:
    """Emptying a store."""
    return kind is Kind.STORE and verb is Verb.RELEASE


def watched(bench: Bench, verb: Verb, thing: Thing) -> Watched:
    """The drain, and what fills it."""
    assert isinstance(thing, Store)
    keys = bench.layout.presence.of([*thing.filled_by, *([thing.through] if thing.through else [])])
    return [(key, HOLDING) for key, _ in keys]


def drain(ask: Asking) -> Lack | None:
    """The drain that surely holds, and what surely fills, are to blame."""
    store, scene = ask.thing, ask.scene
    assert isinstance(store, Store)
    presence = scene.layout.presence
    blames: dict[str, int] = {}
    for key, there in presence.of([store.through] if store.through else []):
        drain = scene.things[key]
        shut = int(holds_while(drain)) if isinstance(drain, Link) else IN
        blames[key] = scene.both(scene.both(ask.usual, there), scene.surely(key, shut))
    for key, there in presence.of(store.filled_by):
        bits = scene.both(scene.both(ask.usual, there), scene.surely(key, IN))
        blames[key] = blames.get(key, 0) | bits
    return lack_of({key: bits for key, bits in blames.items() if bits})
