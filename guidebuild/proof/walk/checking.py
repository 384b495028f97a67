"""A check: what it needs, and the moment kept for the remedies that it may lead to."""

from guidebuild.guide.blocks.check import Check
from guidebuild.proof.asking import Lack
from guidebuild.proof.done import Around, Done
from guidebuild.proof.mistake import Need
from guidebuild.proof.needs.checking import carried, powered
from guidebuild.proof.scene import Scene
from guidebuild.proof.walk.record import Record, moment


def do_check(scene: Scene, check: Check, around: Around, record: Record) -> None:
    """Power first, then what carries the function."""
    where = scene.configurations.both(around.where, scene.configurations.bits(check.when))
    if not where:
        return
    work = Done(around, None, "", check, check.span, where, scene.keep())
    record.done.append(work)
    asked = where
    for need, lack_here in ((Need.POWERED, powered), (Need.CARRIED, carried)):
        lack = lack_here(scene, check, asked)
        if lack is not None:
            _unmet(scene, need, work, lack, record)
            asked = scene.without(asked, lack.where)
    record.moments.append(moment(scene, check, around.step, where))


def _unmet(scene: Scene, need: Need, work: Done, lack: Lack, record: Record) -> None:
    """One finding in each configuration, about the first thing that is to blame there."""
    told = 0
    for thing, where in lack.blames.items():
        here = scene.without(where, told)
        if here:
            told |= here
            blames = {key: bits & here for key, bits in lack.blames.items() if bits & here}
            found = scene.found(thing, here)
            record.lacks(need, work, thing, found, Lack(here, blames))
    for key, where in lack.blames.items():
        scene.forget(key, where)
