"""What must be so at the end, and what is not."""

from collections.abc import Iterable

from guidebuild.device.states import Kind
from guidebuild.device.things import Link, Part, Store
from tests.proof.oracle.facts import Detail, Fact
from tests.proof.oracle.hidden import hiding
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.sets import ABSENT, IN, LEFT, OUT, WORN, Maybe, unpacked
from tests.proof.oracle.start import goal_parts, said_at_start
from tests.proof.oracle.table import ANY
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
    match thing:
        case Part():
            return None if thing.host is None else _as_it_was(start, key)
        case Link():
            return _of_a_link(start, key)
        case Store() if thing.kind is Kind.POWER or thing.filled_by:
            return None
        case _:
            return start.now[key]


def _as_it_was(start: Moment, key: str) -> Maybe:
    """What began absent need not be brought."""
    return OUT | WORN | LEFT | ABSENT if start.surely(key, ABSENT) else start.now[key]


def _of_a_link(start: Moment, key: str) -> Maybe | None:
    """In; of a part that ends otherwise than fitted, or is on such a part, free."""
    world, tied = start.world, ends(start.world, key)
    if set(goal_parts(world, "add")) & set(tied):
        return IN
    around = {part for end in tied for part in chain(world, end)}
    if any(wanted(start, part) not in (None, IN) for part in around):
        return None
    return start.now[key] if key in said_at_start(world) else IN


def endings(start: Moment, end: Moment, seen: Iterable[str]) -> dict[Fact, Detail]:
    """What is surely not as it must be. `seen`: parts of the goal that were open to the hand at some step."""
    world = start.world
    wrong: dict[str, Maybe] = {}
    for key in world.things:
        last = wanted(start, key)
        if last is not None and not end.now[key] & last and not _on_a_lost_host(end, key):
            wrong[key] = last
    found = {
        Fact("ending", _because(start, end, key), key): Detail(found=end.now[key], other=last)
        for key, last in wrong.items()
        if not _follows(end, key, set(wrong))
    }
    for part in goal_parts(world, "replace"):
        if end.unit[part] == frozenset({"old"}) and end.surely(part, IN):
            found[Fact("ending", "goal", part)] = Detail(found=IN, other=IN)
    for part in goal_parts(world, "inspect", "clean", "adjust"):
        if part not in seen:
            found[Fact("ending", "goal", part)] = Detail(found=end.now[part], other=ANY)
    return found


def _because(start: Moment, end: Moment, key: str) -> str:
    world, thing = start.world, start.world.things[key]
    if isinstance(thing, Part) and thing.packing:
        return "packing"
    if key in said_at_end(world):
        return "ends"
    never_came = key in goal_parts(world, "replace", "add") and end.surely(key, ABSENT)
    if key in goal_parts(world, "remove") or never_came:
        return "goal"
    return "lost" if end.surely(key, LEFT) else "state"


def _follows(end: Moment, key: str, wrong: set[str]) -> bool:
    """A link of a part that is not back, or what such a part holds."""
    world, thing = end.world, end.world.things[key]
    match thing:
        case Link():
            return any(part in wrong for one in ends(world, key) for part in chain(world, one))
        case Store() if thing.inside is not None:
            return any(part in wrong for part in chain(world, world.parts([thing.inside])[0]))
        case _:
            return False


def _on_a_lost_host(end: Moment, key: str) -> bool:
    """A part of a host that was lost with the old unit."""
    world = end.world
    on = chain(world, key)[1:] if isinstance(world.things[key], Part) else []
    return any(end.surely(below, LEFT) for below in on)


def open_to_the_hand(moment: Moment) -> set[str]:
    """The goal's parts that are not surely hidden now."""
    parts = goal_parts(moment.world, "inspect", "clean", "adjust")
    return {part for part in parts if not hiding(moment, part)}
