"""Every condition that a guide and its device lay on the options."""

from collections.abc import Iterator

from guidebuild.device.condition import Condition, Is
from guidebuild.device.record import Device
from guidebuild.device.things import Hole
from guidebuild.guide.guide import Guide, KitUse
from guidebuild.guide.inside import conditions
from guidebuild.source.remembered import remembered


def asked(guide: Guide, device: Device) -> Iterator[Condition]:
    """All conditions, in no order that matters; the same one may come again."""
    yield from guide.exclude
    yield from of_device(device)
    for use in guide.kits:
        yield from _forms(use)
    for stage in guide.stages:
        if stage.when is not None:
            yield stage.when
        for step in stage.steps:
            if step.when is not None:
                yield step.when
            yield from conditions(step)


@remembered
def of_device(device: Device) -> tuple[Condition, ...]:
    """Which entries are there, and which of several values of a hole's keys holds."""
    return tuple(_of_things(device))


def _of_things(device: Device) -> Iterator[Condition]:
    for thing in device.things.values():
        if thing.when is not None:
            yield thing.when
        if isinstance(thing, Hole):
            for cases in (thing.screw, thing.torque, thing.thread_depth, thing.grip):
                for case in cases:
                    if case.when is not None:
                        yield case.when


def _forms(use: KitUse) -> Iterator[Condition]:
    """Each form of a kit brings something else, so each is told apart from the others."""
    if use.option is not None:
        for form in use.kit.forms:
            yield Is(use.option, frozenset({form.id}), form.span)
