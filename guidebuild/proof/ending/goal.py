"""What the guide was written for: the new unit is the one that is fitted, what was to be seen was in reach."""

from collections.abc import Iterator

from guidebuild.proof.ending.wrong import Wrong
from guidebuild.proof.marks import OLD, mark
from guidebuild.proof.plain import ANY, IN
from guidebuild.proof.scene import Scene

LOOKED_AT = ("inspect", "clean", "adjust")


def goal_missed(scene: Scene, in_reach: dict[str, int], where: int) -> Iterator[Wrong]:
    """Parts that are fitted and surely still the old unit; parts that no step ever brings into reach."""
    verb = scene.bench.guide.goal.verb
    for key in scene.bench.goal:
        there = scene.both(where, scene.layout.presence.where[key])
        if verb == "replace":
            old = scene.both(scene.surely(mark(key), OLD), scene.surely(key, IN))
            if old & there:
                yield Wrong(key, IN, IN, old & there, "goal")
        elif verb in LOOKED_AT:
            never = scene.without(there, in_reach.get(key, 0))
            if never:
                for found, bits in scene.found(key, never):
                    yield Wrong(key, ANY, found, bits, "goal")
