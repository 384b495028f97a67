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
    arriving = {part: scene.both(where, there) for part, there in delivery.parts.items()}
    spare = {part: _spare(scene, part, bits) for part, bits in arriving.items()}
    for link, bits in _inside(ask, arriving, where):
        if isinstance(link, Hole):
            own = _spare(scene, link.key, bits)
            for end, _ in scene.layout.ends.of(link):
                own = scene.without(own, spare.get(end, 0))
            spare[link.key] = own
        _put(ask, link.key, bits, IN)
    for key, there in delivery.links.items():
        _put_at_rim(ask, key, arriving, scene.both(where, there))
    for part, bits in arriving.items():
        _put(ask, part, bits, IN)
        for store, there in scene.layout.stores.inside.get(part, ()):
            scene.turn(store, scene.both(bits, there), 0, LEFT, IN)
    scene.history.spare.extend((key, ask.work, bits) for key, bits in spare.items() if bits)


def _inside(ask: Asking, arriving: dict[str, int], where: int) -> list[tuple[Link, int]]:
    """Links that tie only the new unit and what arrives on it, at least one of the latter."""
    ties = ask.scene.layout.ties
    links = {link.key: link for part in arriving for link in ties.get(part, ())}
    each = ((link, _within(ask, link, arriving, where)) for link in links.values())
    return [(link, bits) for link, bits in each if bits]


def _within(ask: Asking, link: Link, arriving: dict[str, int], where: int) -> int:
    """Where each end of a link is the new unit or arrives on it."""
    scene = ask.scene
    bits = scene.both(where, scene.layout.presence.where[link.key])
    for end, there in scene.layout.ends.of(link):
        if end != ask.key:
            bits = scene.without(bits, scene.without(there, arriving.get(end, 0)))
    return bits


def _put_at_rim(ask: Asking, key: str, arriving: dict[str, int], where: int) -> None:
    """A listed link that reaches beyond what arrives is fresh, to be closed: new screws, a new seal."""
    link = ask.scene.things[key]
    assert isinstance(link, Link)
    bits = ask.scene.without(where, _within(ask, link, arriving, where))
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
