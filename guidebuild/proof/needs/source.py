"""Power comes from somewhere: a source is mated, if the device has any."""

from guidebuild.device.acts import Verb
from guidebuild.device.states import Kind
from guidebuild.device.things import Thing
from guidebuild.proof.asking import Asking, Lack, lack
from guidebuild.proof.bench import Bench
from guidebuild.proof.plain import GONE, IN, NOT_IN
from guidebuild.proof.scene import Scene
from guidebuild.proof.watch import Watched


def asked_of(kind: Kind, verb: Verb) -> bool:
    """Switching on."""
    return verb is Verb.SWITCH_ON


def watched(bench: Bench, verb: Verb, thing: Thing) -> Watched:
    """The sources that the device has."""
    return [(plug.key, GONE | NOT_IN) for plug in bench.layout.sources]


def source(ask: Asking) -> Lack | None:
    """All sources are to blame where none is in."""
    bits = ask.where & unfed(ask.scene)[0]
    if not bits:
        return None
    where = ask.scene.layout.presence.where
    blames = {plug.key: bits & where[plug.key] for plug in ask.scene.layout.sources}
    return lack(bits, {key: here for key, here in blames.items() if here})


def unfed(scene: Scene) -> tuple[int, int]:
    """Where the device has sources and none is mated: surely, and perhaps."""
    has = none = maybe = 0
    for number, plug in enumerate(scene.layout.sources):
        has |= scene.layout.presence.where[plug.key]
        mated = scene.everywhere ^ scene.perhaps(plug.key, IN)
        open_ = scene.without(scene.everywhere, scene.surely(plug.key, IN))
        none = mated if number == 0 else none & mated
        maybe = open_ if number == 0 else maybe & open_
    return has & none, has & maybe
