"""Which plugs are fed."""

from tests.proof.oracle.moment import Moment
from tests.proof.oracle.sets import IN
from tests.proof.oracle.tree import ends


def feeding(moment: Moment, plug: str) -> set[str]:
    """The sources that surely feed a plug: mated, and joined to one of its parts by mated plugs."""
    world = moment.world
    return {
        source
        for source in world.sources()
        if source != plug
        and moment.surely(source, IN)
        and _live(moment, source) & set(ends(world, plug))
    }


def _live(moment: Moment, source: str) -> set[str]:
    """The parts that a mated source reaches."""
    world = moment.world
    live = set(ends(world, source))
    while True:
        more = {
            part
            for plug in world.connectors()
            if moment.surely(plug.key, IN) and live & set(ends(world, plug.key))
            for part in ends(world, plug.key)
        }
        if more <= live:
            return live
        live |= more
