"""Screws that draw a seal together, and so are tightened in a told order."""

from guidebuild.device.record import Device
from guidebuild.device.things import Hole

MANY = 4  # so many screws round one seal


def wants_sequence(device: Device, keys: tuple[str, ...]) -> bool:
    """Whether four or more screws of a group close a seal, and the record says no order."""
    hole = device.things[keys[0]]
    if not isinstance(hole, Hole) or len(keys) < MANY:
        return False
    group = device.groups.get(hole.group)
    ends = {end.text for end in hole.ends}
    seals = [one for one in device.joints if one.joint == "seal" and len(one.ends) > 1]
    closes = any({end.text for end in seal.ends} <= ends for seal in seals)
    return closes and (group is None or group.sequence is None)
