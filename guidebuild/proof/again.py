"""A kept moment of a proof, to be asked as the walk asks it: what hides, what holds, what moves as one piece."""

from typing import cast

from guidebuild.proof.bench import Bench
from guidebuild.proof.cells import Value
from guidebuild.proof.proof import Proof, Snapshot
from guidebuild.proof.scene import History, Scene
from guidebuild.source.remembered import remembered


def scene_at(proof: Proof, snapshot: Snapshot) -> Scene:
    """A scene of its own with the values of that moment, which it copies before it changes one."""
    return Scene(_bench(proof), cast(dict[str, Value], snapshot.values), History())


@remembered
def _bench(proof: Proof) -> Bench:
    return Bench(proof.guide, proof.device, proof.configurations, proof.layout)
