"""A check with power needs power on; a check of a function needs what carries it to be in."""

from guidebuild.device.record import POWER
from guidebuild.guide.blocks.check import Check
from guidebuild.proof.asking import Lack, lack, lack_of
from guidebuild.proof.plain import IN, NOT_IN
from guidebuild.proof.scene import Scene


def powered(scene: Scene, check: Check, where: int) -> Lack | None:
    """Power is to blame where it is surely off."""
    if not check.powered:
        return None
    bits = scene.without(where, scene.perhaps(POWER, IN))
    return lack(bits, {POWER: bits})


def carried(scene: Scene, check: Check, where: int) -> Lack | None:
    """Each plug, contact or screw that carries a tested function and is surely here and not in."""
    tested = {said.text for said in check.tests}
    blames = {}
    for thing in scene.layout.carrying if tested else ():
        if any(said.text in tested for said in thing.carries):
            bits = scene.both(where, scene.surely(thing.key, NOT_IN))
            if bits:
                blames[thing.key] = bits
    return lack_of(blames) if blames else None
