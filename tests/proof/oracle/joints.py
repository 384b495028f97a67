"""Joints that a part takes with it: seals break when it leaves, joints close when it goes on."""

from guidebuild.device.things import Joint
from tests.proof.oracle.moment import Moment, may_be_one_body, may_ride, one_body, rides
from tests.proof.oracle.sets import IN, LEFT, OUT, WORN, turned
from tests.proof.oracle.tree import ends, pairs


def release_seals(moment: Moment, before: Moment, part: str) -> dict[str, bool]:
    """The seals between what rides on the part and what does not; for each whether it surely broke."""
    found = {}
    for joint in moment.world.joints():
        tied = ends(moment.world, joint.key)
        surely = any(rides(before, end, part) for end in tied) and any(
            not may_ride(before, end, part) for end in tied
        )
        perhaps = any(may_ride(before, end, part) for end in tied) and any(
            not rides(before, end, part) for end in tied
        )
        if joint.joint == "seal" and perhaps and before.perhaps(joint.key, IN):
            to = WORN if joint.single_use else OUT
            moment.now[joint.key] = turned(before.now[joint.key], IN, to, surely, perhaps)
            found[joint.key] = surely and before.surely(joint.key, IN)
    return found


def close_joints(moment: Moment, before: Moment, later: frozenset[str]) -> dict[str, bool]:
    """The open joints whose ends came into one body; for each whether it surely closed."""
    found = {}
    for joint in moment.world.joints():
        if joint.joint in ("solder", "tape", "bead") or joint.key in later:
            continue
        together = all(one_body(moment, *two) for two in pairs(moment.world, joint.key))
        may_together = all(may_be_one_body(moment, *two) for two in pairs(moment.world, joint.key))
        apart = any(not may_be_one_body(before, *two) for two in pairs(moment.world, joint.key))
        may_apart = any(not one_body(before, *two) for two in pairs(moment.world, joint.key))
        if may_together and may_apart and before.perhaps(joint.key, OUT):
            surely = together and apart
            moment.now[joint.key] = turned(before.now[joint.key], OUT, IN, surely, True)
            found[joint.key] = surely and before.surely(joint.key, OUT)
    return found


def renew_joints(moment: Moment, part: str) -> None:
    """A part's own single-use joints are renewed with it."""
    for joint in moment.world.joints():
        if isinstance(joint, Joint) and joint.single_use and part in ends(moment.world, joint.key):
            now = moment.now[joint.key]
            moment.now[joint.key] = turned(now, OUT | WORN | LEFT, OUT, True, True)
