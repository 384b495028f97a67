"""Acts written shorter: groups, lists, `undo` and `do-up`."""

from dataclasses import replace

from guidebuild.device.acts import Verb
from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from tests.proof.fuzz.dice import Dice
from tests.proof.fuzz.wishes import Wish

UNDOES = {Verb.REMOVE, Verb.DISCONNECT, Verb.RELEASE, Verb.LOOSEN}
DOES_UP = {Verb.REFIT, Verb.RECONNECT, Verb.CLOSE, Verb.RESTORE, Verb.TIGHTEN}


def shortened(dice: Dice, device: Device, acts: list[Wish]) -> list[Wish]:
    """The same acts in fewer words, where a throw says so."""
    acts = [_with_its_joints(dice, device, wish) for wish in _groups(dice, device, acts)]
    found: list[Wish] = []
    for wish in acts:
        last = found[-1] if found else None
        if last is None or not dice.often(45):
            found.append(wish)
        elif _same(last, wish) and not last.undo and not last.do_up:
            found[-1] = replace(last, targets=last.targets + wish.targets)
        elif (
            wish.kind is Kind.PART
            and wish.verb in (Verb.REMOVE, Verb.LIFT)
            and last.when == wish.when
            and last.verb in UNDOES
            and not last.undo
            and not last.do_up
        ):
            found[-1] = replace(wish, undo=last.targets)
        elif (
            last.kind is Kind.PART
            and last.verb in (Verb.REFIT, Verb.LOWER)
            and last.when == wish.when
            and wish.verb in DOES_UP
            and not wish.do_up
            and not wish.undo
        ):
            found[-1] = replace(last, do_up=last.do_up + wish.targets)
        else:
            found.append(wish)
    return found


def _with_its_joints(dice: Dice, device: Device, wish: Wish) -> Wish:
    """Joints that would close by themselves may be closed by hand instead."""
    if wish.verb is not Verb.REFIT or wish.kind is not Kind.PART or not dice.often(12):
        return wish
    own = [
        joint.id
        for joint in device.joints
        if wish.targets[0] in [end.text for end in joint.ends] and dice.often(60)
    ]
    return replace(wish, do_up=tuple(own))


def _same(one: Wish, other: Wish) -> bool:
    return (one.kind, one.verb, one.when, one.torque) == (
        other.kind,
        other.verb,
        other.when,
        other.torque,
    ) and not other.undo


def _groups(dice: Dice, device: Device, acts: list[Wish]) -> list[Wish]:
    """All holes of a group, one after the other, are the group."""
    found: list[Wish] = []
    for wish in acts:
        found.append(wish)
        for group in device.groups.values():
            last = found[-len(group.holes) :]
            holes = [target for one in last for target in one.targets]
            if (
                holes == list(group.holes)
                and all(_same(last[0], one) for one in last)
                and dice.often(60)
            ):
                found[-len(group.holes) :] = [replace(last[0], targets=(group.id,))]
    return found
