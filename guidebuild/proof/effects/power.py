"""Power ends when the last source is pulled."""

from guidebuild.device.record import POWER
from guidebuild.proof.needs.source import unfed
from guidebuild.proof.plain import HOLDING, OUT
from guidebuild.proof.scene import Scene


def lose_power(scene: Scene, where: int) -> None:
    """A source changed in `where`: where no source is mated any more, power is out."""
    sure, maybe = unfed(scene)
    scene.turn(POWER, scene.both(where, sure), scene.both(where, maybe), HOLDING, OUT)
