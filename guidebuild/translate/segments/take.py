"""All segments of a guide, a record or a kit, in the order of its file, each once."""

from guidebuild.device.kit import Kit
from guidebuild.device.record import Device
from guidebuild.guide.guide import Guide
from guidebuild.translate.segments.of_device import device_texts, kit_texts
from guidebuild.translate.segments.of_guide import guide_texts
from guidebuild.translate.segments.segment import Segment
from guidebuild.translate.segments.slots import Slots


def segments(of: Guide | Device | Kit) -> tuple[Segment, ...]:
    """What a translator gets of it; `Segment.file` says to which catalogue each belongs."""
    found: list[Segment] = []
    slots = Slots(lambda segment: found.append(segment))
    match of:
        case Guide():
            guide_texts(of, slots)
        case Device():
            device_texts(of, slots)
        case Kit():
            kit_texts(of, slots)
    return tuple({(one.file, one.id): one for one in found}.values())
