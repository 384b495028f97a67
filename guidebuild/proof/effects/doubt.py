"""What is to blame for a mistake is unknown from there, and what would have followed it is unknown with it."""

from guidebuild.device.ends import STAY_OPEN
from guidebuild.device.states import Kind
from guidebuild.device.things import Joint
from guidebuild.proof.bodies import may_tie, one_body
from guidebuild.proof.plain import IN, OUT, WORN
from guidebuild.proof.scene import Scene


def doubt(scene: Scene, key: str, where: int) -> None:
    """Nobody knows any more what state a thing is in; of a part, nor what it would have carried along."""
    scene.forget(key, where)
    if scene.things[key].kind is Kind.PART:
        _may_have_closed(scene, key, where)
        _may_have_broken(scene, key, where)


def _may_have_closed(scene: Scene, part: str, where: int) -> None:
    """A cover that may be on after all may have closed its hooks."""
    for joint in scene.layout.through.get(part, ()):
        if joint.joint not in STAY_OPEN:
            there = scene.both(where, scene.layout.presence.where[joint.key])
            _, together = one_body(scene, scene.layout.ends.seats(joint), there)
            scene.turn(joint.key, 0, together, OUT, IN)


def _may_have_broken(scene: Scene, part: str, where: int) -> None:
    """A cover that may have been off may have broken its seals."""
    for link in scene.layout.touching(part):
        if isinstance(link, Joint) and link.joint == "seal":
            _, across = may_tie(scene, link, part)
            scene.turn(link.key, 0, across & where, IN, WORN if link.single_use else OUT)
