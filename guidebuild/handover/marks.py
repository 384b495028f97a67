"""What a step says to a reader, as two short checksums: its cautions, and everything else.

Made from the values and not from the page, so that a new guidebuild, or a new look, recalls no stick.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from hashlib import sha256

from guidebuild.device.record import Device
from guidebuild.device.things import Hole, Thing
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import acts, items
from guidebuild.guide.step import Step


@dataclass(frozen=True, slots=True)
class Mark:
    """A step as it is on a stick."""

    step: str
    caution: str
    rest: str


def marks(guide: Guide, device: Device) -> tuple[Mark, ...]:
    """One for each step, in the guide's order."""
    return tuple(
        Mark(step.id, _sum(_cautions(step, device)), _sum(_rest(step, device)))
        for step in guide.steps
    )


def _sum(texts: Iterator[str]) -> str:
    return sha256("\0".join(texts).encode()).hexdigest()[:10]


def _cautions(step: Step, device: Device) -> Iterator[str]:
    for item in items(step):
        if not isinstance(item, Caution):
            continue
        yield item.level.text if item.level else ""
        yield from (said.text for said in (item.hazard, item.result, *item.avoid) if said)
        for named in item.hazards:
            hazard = device.hazards.get(named.text)
            if hazard is not None:
                yield hazard.level
                said_all = (hazard.hazard, hazard.result, *hazard.avoid)
                yield from (said.text for said in said_all if said)


def _rest(step: Step, device: Device) -> Iterator[str]:
    """The author's text without its cautions, and what the record says of the things that are worked."""
    text = step.body.text
    for item in items(step):
        if isinstance(item, Caution):
            text = text.replace(item.span.text, "")
    yield " ".join(text.split())
    for act in acts(step):
        more = (*act.undo, *act.do_up) if isinstance(act, PartAct) else ()
        for target in (*act.targets, *more):
            for key in device.names.get(target.text, ()):
                yield from _said(device.things[key])


def _said(thing: Thing) -> Iterator[str]:
    yield thing.name.text if thing.name else thing.id
    if isinstance(thing, Hole):
        yield from (case.value.text for case in thing.screw)
        yield from (str(case.value) for case in thing.torque)
