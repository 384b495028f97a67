"""The texts of a guide and of the stages that it shares."""

from collections.abc import Sequence
from dataclasses import replace

from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.blocks.points import Points
from guidebuild.guide.blocks.store import StoreAct
from guidebuild.guide.blocks.use import Use
from guidebuild.guide.blocks.video import Video
from guidebuild.guide.blocks.wait import Wait
from guidebuild.guide.guide import Before, Guide
from guidebuild.guide.prose import Bullets, Paragraph, Picture, Quote
from guidebuild.guide.stage import Remedy, Stage
from guidebuild.guide.step import Fork, Item, Method, Step
from guidebuild.source.said import Said
from guidebuild.translate.segments.of_device import option
from guidebuild.translate.segments.segment import Weight
from guidebuild.translate.segments.slots import Slots

NONE = "none"


def guide_texts(guide: Guide, slots: Slots) -> Guide:
    """The guide with every text of its author's as the walk's `translate` gives it."""
    slots.file, slots.place, slots.notes = guide.path, "", ()
    own = [one for one in guide.options if one.span.source.path == guide.path]
    told = replace(
        guide,
        title=slots.said(guide.title, "title"),
        only=slots.maybe(guide.only, "only"),
        before=_before(guide.before, slots),
        after=slots.all(guide.after, "after"),
        intro=tuple(slots.prose(block, "intro") for block in guide.intro),
        pictures=_pictures(guide.pictures, slots),
        options=tuple(option(one, slots) if one in own else one for one in guide.options),
    )
    return replace(told, stages=tuple(_stage(stage, guide, slots) for stage in guide.stages))


def _before(before: Before, slots: Slots) -> Before:
    bench = None if before.bench is None else slots.all(before.bench, "bench")
    return replace(before, data=_unless_none(before.data, slots), bench=bench)


def _unless_none(said: Said | None, slots: Slots) -> Said | None:
    """`none` is a word of the markup, which the tool says itself."""
    return said if said is None or said.text == NONE else slots.said(said, "data")


def _stage(stage: Stage, guide: Guide, slots: Slots) -> Stage:
    slots.file, slots.place, slots.notes = guide.path, stage.id, ()
    told = replace(
        stage,
        title=slots.said(stage.title, "stage"),
        then=slots.maybe(stage.then, "then"),
        remedy=_remedy(stage.remedy, slots),
        intro=tuple(slots.prose(block, "intro") for block in stage.intro),
        pictures=_pictures(stage.pictures, slots),
    )
    return replace(told, steps=tuple(_step(step, guide, slots) for step in stage.steps))


def _pictures(pictures: Sequence[Picture], slots: Slots) -> tuple[Picture, ...]:
    return tuple(_picture(one, slots) for one in pictures)


def _picture(picture: Picture, slots: Slots) -> Picture:
    alt = slots.said(picture.alt, f"picture.{picture.file.text}", many=True)
    return replace(picture, alt=alt)


def _remedy(remedy: Remedy | None, slots: Slots) -> Remedy | None:
    return None if remedy is None else replace(remedy, stop=slots.maybe(remedy.stop, "stop"))


def _step(step: Step, guide: Guide, slots: Slots) -> Step:
    slots.file, slots.place = step.file or guide.path, step.id
    slots.notes = (f"step: {step.title.text}",)
    return replace(
        step,
        title=slots.said(step.title, "title"),
        flow=tuple(
            _fork(one, slots) if isinstance(one, Fork) else _item(one, slots) for one in step.flow
        ),
    )


def _fork(fork: Fork, slots: Slots) -> Fork:
    return replace(fork, methods=tuple(_method(method, slots) for method in fork.methods))


def _method(method: Method, slots: Slots) -> Method:
    title = slots.said(method.title, "method", many=True)
    return replace(method, title=title, items=tuple(_item(item, slots) for item in method.items))


def _item(item: Item, slots: Slots) -> Item:
    match item:
        case Paragraph() | Bullets() | Quote():
            return slots.prose(item)
        case Act():
            return _act(item, slots)
        case Caution():
            return _caution(item, slots)
        case Check():
            return _check(item, slots)
        case Wait(reason=reason):
            return replace(item, reason=reason and slots.said(reason, "reason", many=True))
        case Use(note=note):
            return replace(item, note=note and slots.said(note, "note", many=True))
        case Picture():
            return _picture(item, slots)
        case Points() | Video():
            return item


def _act(act: Act, slots: Slots) -> Act:
    told = replace(
        act,
        note=act.note and slots.said(act.note, "note", many=True),
        if_stuck=act.if_stuck and slots.said(act.if_stuck, "if-stuck", many=True),
    )
    match told:
        case PartAct(support=support) if support is not None:
            return replace(told, support=slots.said(support, "support", many=True))
        case StoreAct(by=by) if by is not None:
            return replace(told, by=slots.said(by, "by", many=True))
        case _:
            return told


def _caution(caution: Caution, slots: Slots) -> Caution:
    slots.weight, slots.signal = Weight.CAUTION, caution.level.text if caution.level else ""
    told = replace(
        caution,
        hazard=caution.hazard and slots.said(caution.hazard, "hazard", many=True),
        result=caution.result and slots.said(caution.result, "result", many=True),
        avoid=slots.all(caution.avoid, "avoid"),
    )
    slots.weight, slots.signal = Weight.TEXT, ""
    return told


def _check(check: Check, slots: Slots) -> Check:
    measure = check.measure and replace(
        check.measure, quantity=slots.said(check.measure.quantity, "measure", many=True)
    )
    return replace(
        check,
        expect=slots.said(check.expect, "expect", many=True),
        measure=measure,
        faults=tuple(
            replace(one, see=slots.said(one.see, "see", many=True)) for one in check.faults
        ),
        stop=check.stop and slots.said(check.stop, "stop", many=True),
        note=check.note and slots.said(check.note, "note", many=True),
    )
