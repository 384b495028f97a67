"""What the record puts where: hosts, what lies between two parts, ends, places."""

from guidebuild.device.things import Connector, Link, Part, Store
from tests.proof.oracle.world import World


def host(world: World, part: str) -> str | None:
    """The part that this one is mounted on."""
    thing = world.things[part]
    if not isinstance(thing, Part) or thing.host is None:
        return None
    return next(iter(world.parts([thing.host])), None)


def chain(world: World, part: str) -> list[str]:
    """A part, its host, that one's host, …"""
    found = [part]
    while (below := host(world, found[-1])) is not None and below not in found:
        found.append(below)
    return found


def is_on(world: World, part: str, other: str) -> bool:
    """Whether the record puts a part on another, or on what is on it."""
    return part != other and other in chain(world, part)


def up_to(world: World, part: str, other: str) -> list[str]:
    """The part and what is between it and `other`, on which the record puts it."""
    way = chain(world, part)
    return way[: way.index(other)]


def between(world: World, one: str, other: str) -> list[str] | None:
    """The parts that must be fitted for two to be one piece; None for two separate trees."""
    down, back = chain(world, one), chain(world, other)
    meet = next((part for part in down if part in back), None)
    if meet is None:
        return None
    return down[: down.index(meet)] + back[: back.index(meet)]


def ends(world: World, link: str) -> list[str]:
    """The parts that a link ties."""
    thing = world.things[link]
    assert isinstance(thing, Link)
    return world.parts(thing.ends)


def pairs(world: World, link: str) -> list[tuple[str, str]]:
    """Each two of its ends."""
    tied = ends(world, link)
    return [(one, other) for at, one in enumerate(tied) for other in tied[at + 1 :]]


def place(world: World, key: str) -> str | None:
    """Where the hand goes: `at`, else a part's host, a link's first end (a plug's last), what a store is in."""
    thing = world.things[key]
    if thing.at is not None and world.parts([thing.at]):
        return world.parts([thing.at])[0]
    match thing:
        case Connector():
            return ends(world, key)[-1]
        case Link():
            return ends(world, key)[0]
        case Part():
            return host(world, key)
        case Store() if thing.inside is not None:
            return world.parts([thing.inside])[0]
        case _:
            return None


def places(world: World, key: str) -> list[str]:
    """A thing, its place, the place of that, …"""
    found = [key]
    while (further := place(world, found[-1])) is not None and further not in found:
        found.append(further)
    return found
