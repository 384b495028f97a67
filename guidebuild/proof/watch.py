"""Whether an act may lack anything at all: a glance at what could stand in its way, before it is asked in full.

Each need names what it watches: keys with sets of states. It can only fail in a configuration in which one of
these things surely is in one of those states. So where none is, nothing is asked: the usual case by far.
"""

from collections.abc import Sequence
from typing import TypeAlias

from guidebuild.proof.plain import ANY
from guidebuild.proof.scene import Scene

Watched: TypeAlias = Sequence[tuple[str, int]]
Watch: TypeAlias = tuple[tuple[str, int], ...]

ALWAYS: Watch = (("", ANY),)  # no glance can tell: the need itself is to be asked


def clear(scene: Scene, watch: Watch, where: int) -> bool:
    """Whether nothing that is watched is to be seen anywhere in `where`."""
    values = scene.values
    for key, states in watch:
        value = values.get(key, 0)
        if isinstance(value, int):
            if not value & ~states:
                return False
        elif scene.cells.surely(value, states) & where:
            return False
    return True
