"""Joints that a part takes with it: seals break when it leaves, joints close when it goes on."""

from guidebuild.device.things import Joint
from tests.proof.oracle.deeds import Deed
from tests.proof.oracle.moment import Moment, may_be_one_body, may_ride, one_body, rides
from tests.proof.oracle.sets import HERE_AND_ON, IN, LEFT, OUT, WORN, Maybe, turned
from tests.proof.oracle.tree import between, ends, pairs


def break_seals(moment: Moment, before: Moment, part: str) -> dict[str, bool]:
    """The seals that a part breaks as it leaves, on the device or on the old unit."""
    found = release_seals(moment, before, part)
    if before.perhaps(part, LEFT):
        found |= release_left_seals(moment, before, part)
    return found


def release_seals(
    moment: Moment, before: Moment, part: str, states: Maybe = HERE_AND_ON, fitted: Maybe = IN
) -> dict[str, bool]:
    """The seals between what rides on the part and what does not; for each whether it surely broke."""
    found = {}
    for joint in moment.world.joints():
        tied = ends(moment.world, joint.key)
        surely = any(rides(before, end, part, states) for end in tied) and any(
            not may_ride(before, end, part, states) for end in tied
        )
        perhaps = any(may_ride(before, end, part, states) for end in tied) and any(
            not rides(before, end, part, states) for end in tied
        )
        if joint.joint == "seal" and perhaps and before.perhaps(joint.key, fitted):
            to = WORN if joint.single_use else OUT
            moment.now[joint.key] = turned(moment.now[joint.key], fitted, to, surely, perhaps)
            found[joint.key] = surely and before.surely(joint.key, fitted)
    return found


def release_left_seals(moment: Moment, before: Moment, part: str) -> dict[str, bool]:
    """The same for a part that is taken off the old unit, where it was surely left there."""
    now = dict(moment.now)
    found = release_seals(moment, before, part, LEFT, LEFT)
    if not before.surely(part, LEFT):
        for seal in found:
            moment.now[seal] |= now[seal]
    return {seal: surely and before.surely(part, LEFT) for seal, surely in found.items()}


def stays_open(joint: Joint) -> bool:
    """These do not close by themselves when their part goes on."""
    return joint.joint in ("solder", "tape", "bead")


def close_joints(moment: Moment, before: Moment, deed: Deed) -> dict[str, bool]:
    """The open joints whose ends the part brings into one body; for each whether it surely closed."""
    found = {}
    for joint in moment.world.joints():
        if stays_open(joint) or joint.key in deed.do_up:
            continue
        two_and_two = pairs(moment.world, joint.key)
        if not any(deed.thing in (between(moment.world, *two) or ()) for two in two_and_two):
            continue
        together = all(one_body(moment, *two) for two in two_and_two)
        may_together = all(may_be_one_body(moment, *two) for two in two_and_two)
        apart = any(not may_be_one_body(before, *two) for two in two_and_two)
        may_apart = any(not one_body(before, *two) for two in two_and_two)
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
