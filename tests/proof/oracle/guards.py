"""What may be worked only while something else is open or empty."""

from guidebuild.device.states import Kind
from guidebuild.device.things import Link, Store
from tests.proof.oracle.tree import is_on, place
from tests.proof.oracle.world import World


def named_by(world: World, guard: str) -> set[str]:
    """What a guard names."""
    thing = world.things[guard]
    if not isinstance(thing, Link | Store):
        return set()
    return set(world.keys(thing.guards)) - {guard}


def guarded_by(world: World, guard: str) -> set[str]:
    """What it names; of a part also what is on it, and the links and stores worked there."""
    found: set[str] = set()
    for named in named_by(world, guard):
        found.add(named)
        if world.kind(named) is Kind.PART:
            parts = {named} | {
                part.key for part in world.all_parts() if is_on(world, part.key, named)
            }
            found |= parts
            found |= {
                key
                for key in world.things
                if world.kind(key) is not Kind.PART and place(world, key) in parts
            }
    return found - {guard} - ways_in_and_out(world, guard)


def ways_in_and_out(world: World, guard: str) -> set[str]:
    """What a store is emptied through and filled by is worked while it is full."""
    thing = world.things[guard]
    if not isinstance(thing, Store):
        return set()
    through = () if thing.through is None else (thing.through,)
    return set(world.keys((*through, *thing.filled_by)))
