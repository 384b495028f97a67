"""What must be so at the end, and what is not."""

from collections.abc import Iterable

from guidebuild.device.states import Kind
from guidebuild.device.things import Link, Part, Store
from tests.proof.oracle.facts import Detail, Fact
from tests.proof.oracle.hidden import hiding
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.sets import ABSENT, HERE_AND_ON, IN, LEFT, OUT, WORN, Maybe, unpacked
from tests.proof.oracle.start import goal_parts, said_at_start
from tests.proof.oracle.tree import chain, ends
from tests.proof.oracle.world import World


def said_at_end(world: World) -> dict[str, Maybe]:
    """What the guide says of the end."""
    return {
        key: unpacked(state)
        for name, state in world.guide.ends.items()
        for key in world.device.names.get(name, ())
        if key in world.things
    }


def wanted(start: Moment, key: str) -> Maybe | None:
    """The states in which a thing may end; None where it is free."""
    world, thing = start.world, start.world.things[key]
    said = said_at_end(world)
    if key in said:
        return said[key]
    if key in goal_parts(world, "replace", "add"):
        return IN
    if key in goal_parts(world, "remove"):
        return OUT
    if _is_free(start, key):
        return None
    if start.surely(key, ABSENT):
        return OUT | WORN | LEFT | ABSENT
    if isinstance(thing, Link) and key not in said_at_start(world):
        return IN
    return start.now[key]


def _is_free(start: Moment, key: str) -> bool:
    world, thing = start.world, start.world.things[key]
    match thing:
        case Part():
            return thing.host is None
        case Store():
            return thing.kind is Kind.POWER or bool(thing.filled_by)
        case Link():
            if key in said_at_start(world):
                return False
            added = goal_parts(world, "add")
            return not set(added) & set(ends(world, key)) and _ties_what_ends_off(start, key)
        case _:
            return False


def _ties_what_ends_off(start: Moment, link: str) -> bool:
    """An end, or what an end is mounted on, is to end off; unless all its ends go together."""
    tied = ends(start.world, link)
    chains = [chain(start.world, end) for end in tied]
    for part in {part for way in chains for part in way}:
        last = wanted(start, part)
        off = last is not None and not last <= HERE_AND_ON
        if off and (part in tied or not all(part in way for way in chains)):
            return True
    return False


def endings(start: Moment, end: Moment, seen: Iterable[str]) -> dict[Fact, Detail]:
    """What is surely not as it must be. `seen`: parts of the goal that were open to the hand at some step."""
    world = start.world
    found: dict[str, tuple[str, Detail]] = {}
    for key in world.things:
        last = wanted(start, key)
        if last is not None and not end.now[key] & last:
            found[key] = (_because(start, end, key), Detail(found=end.now[key], other=last))
        elif end.unit.get(key) == frozenset({"old"}) and end.surely(key, IN):
            found[key] = ("goal", Detail(found=end.now[key], other=IN))
    for part in goal_parts(world, "inspect", "clean", "adjust"):
        if part not in seen and part not in found:
            found[part] = ("goal", Detail(found=end.now[part]))
    return {
        Fact("ending", because, key): detail
        for key, (because, detail) in found.items()
        if not _follows(end, key, set(found))
    }


def _because(start: Moment, end: Moment, key: str) -> str:
    world, thing = start.world, start.world.things[key]
    if isinstance(thing, Part) and thing.packing:
        return "packing"
    if key in said_at_end(world):
        return "ends"
    if key in goal_parts(world, "remove") or (
        key in goal_parts(world, "add") and end.surely(key, ABSENT)
    ):
        return "goal"
    return "lost" if end.surely(key, LEFT) else "state"


def _follows(end: Moment, key: str, wrong: set[str]) -> bool:
    """A link of a part that is itself wrong; a part of a host that was lost with the old unit."""
    world = end.world
    match world.things[key]:
        case Link():
            return any(part in wrong for one in ends(world, key) for part in chain(world, one))
        case Part():
            return any(end.surely(below, LEFT) for below in chain(world, key)[1:])
        case _:
            return False


def open_to_the_hand(moment: Moment) -> set[str]:
    """The goal's parts that are not surely hidden now."""
    parts = goal_parts(moment.world, "inspect", "clean", "adjust")
    return {part for part in parts if not hiding(moment, part)}
