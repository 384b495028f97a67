"""What is to blame for a mistake is unknown from there on, and so is what it would have carried along."""

from collections.abc import Iterable

from guidebuild.device.states import Kind
from tests.proof.oracle.joints import stays_open
from tests.proof.oracle.moment import Moment, may_be_one_body, may_ride, rides
from tests.proof.oracle.sets import IN, OUT, WORN, turned
from tests.proof.oracle.tree import between, ends, pairs


def doubt(moment: Moment, blamed: Iterable[str]) -> None:
    """Nobody knows any more; of parts, nor which joints they closed and which seals they broke."""
    keys = set(blamed)
    for key in keys:
        moment.forget(key)
    for part in (key for key in keys if moment.world.kind(key) is Kind.PART):
        _may_have_closed(moment, part)
        _may_have_broken(moment, part)


def _may_have_closed(moment: Moment, part: str) -> None:
    """A cover that may be on after all may have closed its hooks."""
    world = moment.world
    for joint in world.joints():
        two_and_two = pairs(world, joint.key)
        of_the_part = any(part in (between(world, *two) or ()) for two in two_and_two)
        together = all(may_be_one_body(moment, *two) for two in two_and_two)
        if of_the_part and together and not stays_open(joint):
            moment.now[joint.key] = turned(moment.now[joint.key], OUT, IN, False, True)


def _may_have_broken(moment: Moment, part: str) -> None:
    """A cover that may have been off may have broken its seals."""
    for joint in moment.world.joints():
        tied = ends(moment.world, joint.key)
        across = any(may_ride(moment, end, part) for end in tied) and any(
            not rides(moment, end, part) for end in tied
        )
        if joint.joint == "seal" and across:
            to = WORN if joint.single_use else OUT
            moment.now[joint.key] = turned(moment.now[joint.key], IN, to, False, True)
