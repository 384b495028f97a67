"""What a new unit brings: sub-parts fitted on it, links inside and at its rim, packing to take off."""

from guidebuild.device.things import Hole, Link, Part
from guidebuild.proof.asking import Asking
from guidebuild.proof.bench import Delivery
from guidebuild.proof.plain import HALF, IN, LEFT, OUT
from guidebuild.proof.scene import Scene


def arrive(ask: Asking) -> None:
    """`exchange`, `renew`, `add`: what each kit's form brings, where the part comes in that form."""
    scene = ask.scene
    for delivery in scene.bench.deliveries.get(ask.key, ()):
        where = scene.both(ask.done, delivery.where)
        if where:
            _unpack(ask, delivery, where)
    for rider in scene.layout.hosts.carried(ask.key):
        part = scene.things[rider]
        if isinstance(part, Part) and part.packing:
            for host, there in scene.layout.hosts.host(rider):
                if host == ask.key:
                    _put(ask, rider, scene.both(ask.done, there), IN)


def _unpack(ask: Asking, delivery: Delivery, where: int) -> None:
    scene = ask.scene
    spare = {part: _spare(scene, part, where) for part in delivery.parts}
    for link, bits in _inside(scene, ask.key, delivery, where):
        if isinstance(link, Hole):
            own = _spare(scene, link.key, bits)
            for end, _ in scene.layout.ends.of(link):
                own = scene.without(own, spare.get(end, 0))
            spare[link.key] = own
        _put(ask, link.key, bits, IN)
    for key in delivery.links:
        _put_at_rim(ask, key, delivery, where)
    for part in delivery.parts:
        _put(ask, part, where, IN)
        for store, there in scene.layout.stores.inside.get(part, ()):
            scene.turn(store, scene.both(where, there), 0, LEFT, IN)
    scene.history.spare.extend((key, ask.work, bits) for key, bits in spare.items() if bits)


def _inside(scene: Scene, part: str, delivery: Delivery, where: int) -> list[tuple[Link, int]]:
    """Links that tie only the new unit and what arrives on it, at least one of the latter."""
    links = {
        link.key: link for rider in delivery.parts for link in scene.layout.ties.get(rider, ())
    }
    found = []
    for link in links.values():
        bits = _within(scene, link, {part, *delivery.parts}, where)
        if bits:
            found.append((link, bits))
    return found


def _within(scene: Scene, link: Link, parts: set[str], where: int) -> int:
    """Where each end of a link is one of these parts."""
    bits = scene.both(where, scene.layout.presence.where[link.key])
    for end, there in scene.layout.ends.of(link):
        if end not in parts:
            bits = scene.without(bits, there)
    return bits


def _put_at_rim(ask: Asking, key: str, delivery: Delivery, where: int) -> None:
    """A listed link that reaches beyond what arrives is fresh, to be closed: new screws, a new seal."""
    scene = ask.scene
    link = scene.things[key]
    assert isinstance(link, Link)
    inside = _within(scene, link, {ask.key, *delivery.parts}, where)
    bits = scene.without(scene.both(where, scene.layout.presence.where[key]), inside)
    _put(ask, key, bits, HALF if isinstance(link, Hole) and link.captive else OUT)


def _put(ask: Asking, key: str, where: int, states: int) -> None:
    scene = ask.scene
    bits = scene.both(where, scene.layout.presence.where[key])
    if bits:
        scene.put(key, bits, states)
        scene.history.worked.append((key, ask.work, bits))


def _spare(scene: Scene, key: str, where: int) -> int:
    """Where a thing surely lies in the hand or the tray already."""
    there = scene.layout.presence.where[key]
    return scene.both(scene.both(where, there), scene.surely(key, OUT))
