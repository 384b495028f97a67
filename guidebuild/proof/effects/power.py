"""Power ends when the last source is pulled."""

from guidebuild.device.record import POWER
from guidebuild.proof.asking import Asking
from guidebuild.proof.needs.source import unfed
from guidebuild.proof.plain import HOLDING, OUT


def lose_power(ask: Asking) -> None:
    """Where no source is mated any more, power is out."""
    scene = ask.scene
    sure, maybe = unfed(scene)
    scene.turn(POWER, scene.both(ask.done, sure), scene.both(ask.done, maybe), HOLDING, OUT)
