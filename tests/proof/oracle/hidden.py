"""What a thing lies behind, and what of it is in the way now."""

from guidebuild.device.things import Link
from tests.proof.oracle.moment import Moment, one_body
from tests.proof.oracle.sets import IN, Maybe
from tests.proof.oracle.tree import ends, host, is_on, place, places
from tests.proof.oracle.world import World


def lies_behind(world: World, key: str) -> list[str]:
    """Its own covers, and those of the part where it is worked, and so on."""
    thing = world.things[key]
    tied = set(ends(world, key)) if isinstance(thing, Link) else set()
    way = places(world, key)
    found = []
    for level, one in enumerate(way):
        covers = world.parts(world.things[one].behind)
        of_the_cover = set(way[: level + 1]) | (tied if level else set())
        if not of_the_cover & set(covers):
            found += [cover for cover in covers if not is_on(world, cover, key)]
        if not world.things[one].behind_inherits:
            break
    return found


def hiding(moment: Moment, key: str, fitted: Maybe = IN) -> set[str]:
    """The covers that surely hide it; among what is left on an old unit, `fitted` is left."""
    world = moment.world
    worked_at = place(world, key)
    if worked_at is None:
        return set()
    return {
        cover
        for cover in lies_behind(world, key)
        if moment.surely(cover, fitted)
        and (of_cover := host(world, cover)) is not None
        and one_body(moment, of_cover, worked_at, fitted)
    }
