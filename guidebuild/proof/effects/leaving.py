"""What goes away with an old unit, and what comes back with a part that is taken off it."""

from collections.abc import Iterator

from guidebuild.device.ends import holds_while
from guidebuild.device.things import Link, Store
from guidebuild.proof.asking import Asking
from guidebuild.proof.bodies import all_perhaps, all_surely, inside, rides
from guidebuild.proof.plain import HOLDING, IN, LEFT
from guidebuild.proof.scene import Scene


def leave(ask: Asking) -> None:
    """`exchange`: what rides on the old unit, and the links that hold inside it, are left on it."""
    scene = ask.scene
    turns = list(_with(scene, ask.key, HOLDING))
    for key, sure, maybe in turns:
        thing = scene.things[key]
        states = int(holds_while(thing)) if isinstance(thing, Link) else HOLDING
        if isinstance(thing, Store):
            states = IN
        _turn(ask, key, (sure, maybe), states, LEFT)


def bring_over(ask: Asking) -> None:
    """A part taken off the old unit brings what rides on it."""
    if not ask.scene.perhaps(ask.key, LEFT) & ask.done:
        return
    scene = ask.scene
    off_it = scene.both(ask.done, scene.surely(ask.key, LEFT))
    may_be = scene.both(ask.done, scene.perhaps(ask.key, LEFT))
    for key, sure, maybe in [*_with(scene, ask.key, LEFT), *_own_stores(scene, ask.key)]:
        _turn(ask, key, (sure & off_it, maybe & may_be), LEFT, IN)


def _turn(ask: Asking, key: str, bits: tuple[int, int], states: int, to: int) -> None:
    scene = ask.scene
    sure, maybe = (scene.both(ask.done, one) for one in bits)
    before = scene.values[key]
    scene.turn(key, sure, maybe, states, to)
    if scene.values[key] is not before:
        scene.history.worked.append((key, ask.work, maybe | sure))


def _with(scene: Scene, part: str, riding: int) -> Iterator[tuple[str, int, int]]:
    """All that goes with a part: keys, and where they surely and perhaps do."""
    riders = scene.layout.hosts.carried(part)
    for rider in riders:
        yield rider, *_carried(scene, rider, part, riding)
    for link in scene.layout.touching(part):
        yield link.key, *inside(scene, link, part, riding)
    for rider in riders:
        for store, there in scene.layout.stores.inside.get(rider, ()):
            sure, maybe = rides(scene, rider, part, riding)
            yield store, scene.both(sure, there), scene.both(maybe, there)


def _own_stores(scene: Scene, part: str) -> Iterator[tuple[str, int, int]]:
    """The stores in the part itself: a part that is moved over brings them, a new unit has its own."""
    for store, there in scene.layout.stores.inside.get(part, ()):
        yield store, there, there


def _carried(scene: Scene, rider: str, part: str, riding: int) -> tuple[int, int]:
    """Where all that lies between a rider and the part rides; its own state is the caller's matter."""
    sure = maybe = 0
    for chain in scene.layout.hosts.chains(rider):
        if part in chain.parts:
            way = chain.parts[1 : chain.parts.index(part)]
            sure |= all_surely(scene, way, riding, chain.where)
            maybe |= all_perhaps(scene, way, riding, chain.where)
    return sure, maybe
