"""The law, asked of one moment in one configuration with plain sets."""

from collections.abc import Callable, Iterator

from guidebuild.device.record import POWER
from guidebuild.device.states import Kind
from tests.proof.oracle.sets import GONE, IN, Maybe
from tests.proof.oracle.tree import between, ends, pairs
from tests.proof.oracle.world import World

Asked = Callable[[str], Maybe]  # what may be true of a thing


def breaches(world: World, states: Asked) -> Iterator[tuple[str, str]]:
    """What contradicts the law, and the thing that it is about."""
    for link in world.links():
        if states(link.key) <= IN:
            if link.kind is Kind.CONNECTOR:
                for end in ends(world, link.key):
                    if states(end) <= GONE:
                        yield "a plug sits on a missing part", link.key
            elif not world.soft(link.key) and _spans_two_bodies(world, states, link.key):
                yield "a closed screw or joint spans two bodies", link.key
    sources = world.sources()
    if sources and states(POWER) <= IN and not any(states(one) & IN for one in sources):
        yield "power is on without a source", POWER


def _spans_two_bodies(world: World, states: Asked, link: str) -> bool:
    """Two of its ends, in one tree, with a part between them that is surely not fitted."""
    ways = [between(world, *two) for two in pairs(world, link)]
    return any(way is not None and any(not states(part) & IN for part in way) for way in ways)
