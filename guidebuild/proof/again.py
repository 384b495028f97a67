"""A kept moment of a proof, to be asked as the walk asks it: what hides, what holds, what moves as one piece."""

from guidebuild.proof.bench import Bench
from guidebuild.proof.cells import Partition, Value
from guidebuild.proof.proof import Proof, Snapshot
from guidebuild.proof.scene import History, Scene


def scene_at(proof: Proof, snapshot: Snapshot) -> Scene:
    """A scene of its own with the values of that moment."""
    bench = Bench(proof.guide, proof.device, proof.configurations, proof.layout)
    values: dict[str, Value] = {
        key: value if isinstance(value, int | Partition) else Partition(dict(value))
        for key, value in snapshot.values.items()
    }
    return Scene(bench, values, History())
