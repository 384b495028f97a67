"""A plug is worked only while nothing feeds it, or while power is off, or at any time: its `live` level."""

from guidebuild.device.acts import Verb
from guidebuild.device.record import POWER
from guidebuild.device.states import Kind
from guidebuild.device.things import Connector, Thing
from guidebuild.proof.asking import Asking, Lack, lack
from guidebuild.proof.bench import Bench
from guidebuild.proof.feed import feeders, feeds
from guidebuild.proof.plain import IN
from guidebuild.proof.watch import Watched


def asked_of(kind: Kind, verb: Verb) -> bool:
    """Plugs."""
    return kind is Kind.CONNECTOR


def watched(bench: Bench, verb: Verb, thing: Thing) -> Watched:
    """Power, or the other sources that may feed it; some may be worked at any time."""
    if not isinstance(thing, Connector) or thing.live == "any":
        return ()
    if thing.live == "off":
        return ((POWER, IN),)
    return [(plug.key, IN) for plug in bench.layout.sources if plug.key != thing.key]


def dead(ask: Asking) -> Lack | None:
    """What feeds it, or the power switch, is to blame."""
    plug, scene = ask.thing, ask.scene
    assert isinstance(plug, Connector)
    if not ask.usual:
        return None
    if plug.live == "off":
        bits = scene.both(ask.usual, scene.surely(POWER, IN))
        return lack(bits, {POWER: bits})
    bits = feeds(scene, plug, ask.usual)
    return lack(bits, feeders(scene, plug, bits) if bits else {})
