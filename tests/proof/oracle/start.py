"""The device before the first step."""

from guidebuild.device.record import POWER
from guidebuild.device.things import Part
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.sets import (
    ABSENT,
    HALF,
    HERE_AND_ON,
    IN,
    OUT,
    UNKNOWN,
    Maybe,
    unpacked,
)
from tests.proof.oracle.tree import between, chain, ends, host, pairs
from tests.proof.oracle.world import World


def said_at_start(world: World) -> dict[str, Maybe]:
    """What the record says, and over it what the guide says."""
    said = {
        key: unpacked(thing.starts)
        for key, thing in world.things.items()
        if thing.starts is not None
    }
    for name, state in world.guide.starts.items():
        for key in world.device.names.get(name, ()):
            if key in world.things:
                said[key] = unpacked(state)
    return said


def goal_parts(world: World, *verbs: str) -> list[str]:
    """The parts of the goal, where it is one of these verbs."""
    goal = world.guide.goal
    return world.parts(goal.parts) if goal.verb in verbs else []


def start(world: World) -> Moment:
    """Everything in, but for what is said, what is not here yet, and links of what is not together."""
    moment = Moment(world, {}, {})
    said = said_at_start(world)
    for part in world.all_parts():
        for each in reversed(chain(world, part.key)):
            if each not in moment.now:
                moment.now[each] = said.get(each) or _part(moment, each)
    for link in world.links():
        moment.now[link.key] = said.get(link.key) or _link(moment, link.key)
    for store in world.stores():
        moment.now[store.key] = said.get(store.key) or IN
    if POWER not in said and world.sources() and not _fed(moment):
        moment.now[POWER] = OUT
    moment.unit = {part: frozenset({"old"}) for part in goal_parts(world, "replace")}
    return moment


def _part(moment: Moment, key: str) -> Maybe:
    world = moment.world
    part = world.things[key]
    assert isinstance(part, Part)
    below = host(world, key)
    comes_later = part.packing or key in goal_parts(world, "add")
    if comes_later or (below is not None and moment.surely(below, ABSENT)):
        return ABSENT
    return IN


def _link(moment: Moment, key: str) -> Maybe:
    together = _soft(moment, key) if moment.world.soft(key) else _rigid(moment, key)
    if together is None:
        return UNKNOWN[moment.world.kind(key)]
    if together:
        return IN
    return HALF if moment.world.captive(key) else OUT


def _rigid(moment: Moment, key: str) -> bool | None:
    """Whether what it ties is one body; None: nobody knows. Of separate trees, as a soft link."""
    ways = [between(moment.world, *two) for two in pairs(moment.world, key)]
    if None in ways:
        return _soft(moment, key)
    return _all(moment, {(part, IN) for way in ways for part in way or ()})


def _soft(moment: Moment, key: str) -> bool | None:
    """Whether each end is on the device, fitted or lifted, with all that it is mounted on."""
    world = moment.world
    return _all(
        moment,
        {(part, HERE_AND_ON) for end in ends(world, key) for part in chain(world, end)},
    )


def _all(moment: Moment, needed: set[tuple[str, Maybe]]) -> bool | None:
    if all(moment.surely(part, states) for part, states in needed):
        return True
    if any(not moment.perhaps(part, states) for part, states in needed):
        return False
    return None


def _fed(moment: Moment) -> bool:
    return any(moment.perhaps(source, IN) for source in moment.world.sources())
