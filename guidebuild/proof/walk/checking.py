"""A check: what it needs, and the moment kept for the remedies that it may lead to."""

from guidebuild.guide.blocks.check import Check
from guidebuild.proof.asking import Lack
from guidebuild.proof.mistake import Need
from guidebuild.proof.needs.checking import carried, powered
from guidebuild.proof.scene import Scene
from guidebuild.proof.walk.record import Around, moment


def do_check(scene: Scene, check: Check, around: Around) -> None:
    """Power first, then what carries the function."""
    where = scene.configurations.both(around.where, scene.configurations.bits(check.when))
    if not where:
        return
    around.walk(scene, check, where)
    asked = where
    for need, lack_here in ((Need.POWERED, powered), (Need.CARRIED, carried)):
        lack = lack_here(scene, check, asked)
        if lack is not None:
            _unmet(scene, need, check, lack, around)
            asked = scene.without(asked, lack.where)
    around.record.moments.append(moment(scene, check, around.step, where))


def _unmet(scene: Scene, need: Need, check: Check, lack: Lack, around: Around) -> None:
    thing = next(iter(lack.blames))
    found = scene.found(thing, lack.blames[thing])
    around.lacks(need, check, thing, found, lack, check.span)
    for key, where in lack.blames.items():
        scene.forget(key, where)
