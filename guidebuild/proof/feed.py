"""What is live: the parts that current reaches from a mated source over mated connectors."""

from collections.abc import Sequence

from guidebuild.device.things import Connector
from guidebuild.proof.plain import IN
from guidebuild.proof.scene import Scene


def fed(scene: Scene, sources: Sequence[Connector]) -> dict[str, int]:
    """Parts that these sources surely feed, and where.

    Whether a part is fitted, lifted or lies on the bench does not matter to the current.
    """
    live: dict[str, int] = {}
    for source in sources:
        _spread(scene, source, scene.surely(source.key, IN), live)
    grown = bool(live)
    while grown:
        grown = False
        for plug in scene.layout.device.connectors:
            mated = scene.surely(plug.key, IN)
            reached = mated & _at_ends(scene, plug, live) if mated else 0
            grown = (bool(reached) and _spread(scene, plug, reached, live)) or grown
    return live


def feeds(scene: Scene, plug: Connector, where: int) -> int:
    """The configurations of `where` in which something other than itself surely feeds a plug."""
    others = [source for source in scene.layout.sources if source.key != plug.key]
    return where & _at_ends(scene, plug, fed(scene, others)) if others else 0


def feeders(scene: Scene, plug: Connector, where: int) -> dict[str, int]:
    """Each source that by itself feeds a plug, and where."""
    found = {}
    for source in scene.layout.sources:
        if source.key != plug.key:
            reached = where & _at_ends(scene, plug, fed(scene, [source]))
            if reached:
                found[source.key] = reached
    return found


def _at_ends(scene: Scene, plug: Connector, live: dict[str, int]) -> int:
    reached = 0
    for end, there in scene.layout.ends.of(plug):
        if end in live:
            reached |= scene.both(there, live[end])
    return reached


def _spread(scene: Scene, plug: Connector, where: int, live: dict[str, int]) -> bool:
    """All ends of a mated plug become live; whether that is more than before."""
    grown = False
    for end, there in scene.layout.ends.of(plug):
        reached = scene.both(where, there)
        before = live.get(end, 0)
        if reached and reached is not before and before | reached != before:
            live[end] = before | reached if before else reached
            grown = True
    return grown
