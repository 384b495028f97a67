"""The joints that a part's act carries: seals that it breaks, joints that close as it goes on, its own renewed.

They ask no needs of their own: they follow the part.
"""

from collections.abc import Iterator

from guidebuild.device.ends import STAY_OPEN
from guidebuild.device.things import Joint
from guidebuild.guide.blocks.part import PartAct
from guidebuild.proof.asking import Asking
from guidebuild.proof.bodies import may_tie, one_body
from guidebuild.proof.effects.change import change
from guidebuild.proof.effects.filling import emptied, filled
from guidebuild.proof.plain import IN, LEFT, OUT, WORN
from guidebuild.proof.scene import Scene


def break_seals(ask: Asking) -> None:
    """`remove` and `lift` release the seals between what rides on the part and what does not."""
    scene = ask.scene
    for link in scene.layout.touching(ask.key):
        if isinstance(link, Joint) and link.joint == "seal":
            closed = scene.both(ask.done, scene.perhaps(link.key, IN))
            if closed:
                sure, maybe = (closed & bits for bits in may_tie(scene, link, ask.key))
                _break(ask, link, sure, maybe, IN)
            kept = ask.done & scene.perhaps(link.key, LEFT) & scene.perhaps(ask.key, LEFT)
            if kept:  # between a part that is taken off the old unit and that unit
                sure, maybe = (kept & bits for bits in may_tie(scene, link, ask.key, LEFT))
                _break(ask, link, sure & scene.surely(ask.key, LEFT), maybe, LEFT)


def _break(ask: Asking, seal: Joint, sure: int, maybe: int, states: int) -> None:
    surely = sure & ask.scene.surely(seal.key, states)
    ask.scene.turn(seal.key, sure, maybe, states, WORN if seal.single_use else OUT)
    ask.scene.history.worked.append((seal.key, ask.work, sure | maybe))
    emptied(ask, seal.key, surely, sure | maybe)


def close_joints(ask: Asking) -> None:
    """`refit` and `lower` change the part, and close each open joint whose ends that brings together."""
    scene = ask.scene
    before = [(joint, _together(scene, joint, ask.done)) for joint in _waiting(ask)]
    change(ask)
    for joint, (were, may_have_been) in before:
        sure, maybe = _together(scene, joint, ask.done)
        brought, perhaps = scene.without(sure, may_have_been), scene.without(maybe, were)
        surely = brought & scene.surely(joint.key, OUT)
        perhaps &= scene.perhaps(joint.key, OUT)
        scene.turn(joint.key, brought, perhaps, OUT, IN)
        scene.history.worked.append((joint.key, ask.work, perhaps))
        filled(ask, joint.key, surely, perhaps)


def renew_joints(ask: Asking) -> None:
    """A part's `renew` renews its own single-use joints, too."""
    scene = ask.scene
    for link in scene.layout.ties.get(ask.key, ()):
        if isinstance(link, Joint) and link.single_use:
            there = scene.layout.presence.where[link.key]
            scene.turn(link.key, scene.both(ask.done, there), 0, OUT | WORN | LEFT, OUT)


def _waiting(ask: Asking) -> Iterator[Joint]:
    """Joints that may be open, close by themselves, and are not told to be closed later in this act."""
    scene = ask.scene
    act = ask.work.act
    later = {said.text for said in act.do_up} if isinstance(act, PartAct) else ()
    for joint in scene.layout.through.get(ask.key, ()):
        follows = joint.joint not in STAY_OPEN and joint.id not in later
        if follows and scene.both(ask.done, scene.perhaps(joint.key, OUT)):
            yield joint


def _together(scene: Scene, joint: Joint, where: int) -> tuple[int, int]:
    there = scene.both(where, scene.layout.presence.where[joint.key])
    return one_body(scene, scene.layout.ends.seats(joint), there)
