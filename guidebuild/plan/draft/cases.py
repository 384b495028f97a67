"""The configurations that a draft is written for: the record's options, and the forms of its kits."""

from collections.abc import Sequence

from guidebuild.device.condition import Condition, Is, Not
from guidebuild.device.record import Device
from guidebuild.guide.asked import of_device
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.guide import KitUse
from guidebuild.guide.merging import axes
from guidebuild.read.guide.supply import kit_options


def cases_of(device: Device, used: Sequence[KitUse] = (), form: str = "") -> Configurations:
    """Numbered as the finished guide's will be. `form`: only this form of the kits."""
    options = (*device.options, *kit_options(used))
    conditions: list[Condition] = list(of_device(device))
    exclude: list[Condition] = list(device.exclude)
    for use in used:
        for one in use.kit.forms if use.option is not None else ():
            leaf = Is(use.option or "", frozenset({one.id}), one.span)
            conditions.append(leaf)
            if one.id == form:
                exclude.append(Not(leaf))
    return Configurations(axes(options, conditions), tuple(exclude))
