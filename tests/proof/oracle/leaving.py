"""The old unit goes to the bench with what rides on it, and what is taken off it there comes back."""

from guidebuild.device.states import Kind
from tests.proof.oracle.moment import Moment, may_ride, rides
from tests.proof.oracle.sets import HERE_AND_ON, IN, LEFT, Maybe, turned
from tests.proof.oracle.tree import ends, is_on, up_to


def leaves(moment: Moment, before: Moment, part: str) -> None:
    """What rides on the old unit, and the links and stores inside that, become left."""
    world = moment.world
    for rider in world.all_parts():
        if is_on(world, rider.key, part):
            way = up_to(world, rider.key, part)[1:]
            surely = all(before.surely(each, HERE_AND_ON) for each in way)
            perhaps = all(before.perhaps(each, HERE_AND_ON) for each in way)
            now = before.now[rider.key]
            moment.now[rider.key] = turned(now, HERE_AND_ON, LEFT, surely, perhaps)
    for link in world.links():
        tied = ends(world, link.key)
        surely = all(rides(before, end, part) for end in tied)
        perhaps = all(may_ride(before, end, part) for end in tied)
        inside = IN if world.captive(link.key) else HERE_AND_ON
        moment.now[link.key] = turned(before.now[link.key], inside, LEFT, surely, perhaps)
    for store in world.stores():
        if store.inside is not None:
            within = world.parts([store.inside])[0]
            if within != part:
                surely, perhaps = rides(before, within, part), may_ride(before, within, part)
                moment.now[store.key] = turned(before.now[store.key], IN, LEFT, surely, perhaps)


def bring_over(moment: Moment, before: Moment, part: str) -> None:
    """A part taken off the old unit brings what rides on it there."""
    world = moment.world
    was_left = before.surely(part, LEFT)

    def back(now: Maybe, surely: bool, perhaps: bool) -> Maybe:
        return turned(now, LEFT, IN, surely and was_left, perhaps)

    for thing in world.things.values():
        key = thing.key
        match thing.kind:
            case Kind.PART if is_on(world, key, part):
                way = up_to(world, key, part)[1:]
                surely = all(before.surely(each, LEFT) for each in way)
                perhaps = all(before.perhaps(each, LEFT) for each in way)
                moment.now[key] = back(before.now[key], surely, perhaps)
            case Kind.FASTENER | Kind.CONNECTOR | Kind.JOINT:
                tied = ends(world, key)
                surely = all(rides(before, end, part, LEFT) for end in tied)
                perhaps = all(may_ride(before, end, part, LEFT) for end in tied)
                moment.now[key] = back(moment.now[key], surely, perhaps)
    for store in world.stores():
        if store.inside is not None:
            within = world.parts([store.inside])[0]
            surely, perhaps = (
                rides(before, within, part, LEFT),
                may_ride(before, within, part, LEFT),
            )
            moment.now[store.key] = back(before.now[store.key], surely, perhaps)
