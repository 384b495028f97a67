"""The ids in a guide: in its acts and blocks, its conditions, its front matter and its kits."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from guidebuild.device.condition import Condition
from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from guidebuild.device.things import Part
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.blocks.fastener import FastenerAct
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.blocks.points import Points
from guidebuild.guide.blocks.use import Use
from guidebuild.guide.blocks.video import Video
from guidebuild.guide.blocks.wait import Wait
from guidebuild.guide.guide import Guide, KitUse
from guidebuild.guide.prose import Bullets, Paragraph, Picture, Quote
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Fork, Item, Step
from guidebuild.read.faults import duplicate_id
from guidebuild.read.guide.pictures import folders
from guidebuild.read.references.conditions import look_up_conditions
from guidebuild.read.references.names import Names, tell_unknown
from guidebuild.read.references.record import Around, there
from guidebuild.source.finding import Related
from guidebuild.source.said import Said

_LINKS = (Kind.FASTENER, Kind.CONNECTOR, Kind.JOINT, Kind.STORE)


@dataclass(frozen=True, slots=True)
class Unsure:
    """`ids`: of the record and the kits; `steps`: of stages and steps. True where some could not be read."""

    ids: bool
    steps: bool


class Lookup:
    """One guide's ids against its device, its stages and steps, and what lies in the content folder."""

    def __init__(
        self, device: Device, around: Around, stages: tuple[Stage, ...], unsure: Unsure
    ) -> None:
        muted = around.report.muted()
        self.names = Names(device, muted if unsure.ids else around.report)
        self.report = around.report
        self.of_steps = muted if unsure.steps else around.report
        self.tools = around.tools
        self.around = around
        self.models = device.id.split("+")
        self.device = device
        self.remedies = {stage.id: stage for stage in stages if stage.remedy is not None}
        self.stages = {stage.id: stage for stage in stages}
        self.steps = {step.id: step for stage in stages for step in stage.steps}

    def guide(self, guide: Guide) -> None:
        """Everything that a guide names."""
        self.names.things(guide.goal.parts)
        for use in guide.kits:
            self._kit(use)
        for stage in guide.stages:
            self._stage(stage)
        for option in guide.options:
            if option.seen_in is not None:
                self._one(option.seen_in, "step", self.steps)
        known = {option.id: option for option in guide.options}
        look_up_conditions(_conditions(guide), known, self.names.report)

    def _kit(self, use: KitUse) -> None:
        kit = use.kit
        self.names.things(kit.brings, Kind.PART)
        for take_off in (kit.take_off, *(form.take_off for form in kit.forms)):
            self._packing(take_off)
        materials = [one.item for one in kit.materials]
        tools = list(kit.tools)
        for form in kit.forms:
            self.names.things(form.arrives_with)
            materials += [one.item for one in form.materials]
            tools += form.tools
        self._materials(tuple(materials))
        self._tools(tuple(tools))

    def _packing(self, take_off: Mapping[str, Said]) -> None:
        """What comes on a new unit has ids of its own."""
        for id_, name in take_off.items():
            thing = self.device.things[self.device.names[id_][0]]
            if not (isinstance(thing, Part) and thing.packing):
                first = Related(thing.span, "taken here")
                do = "give what must be taken off another id"
                self.report.tell(duplicate_id, name.span, related=(first,), id=id_, do=do)

    def _stage(self, stage: Stage) -> None:
        if stage.remedy is not None:
            self._functions(stage.remedy.functions)
            if stage.remedy.resume is not None:
                self._one(stage.remedy.resume, "step", self.steps)
        for step in stage.steps:
            if step.same_as is not None:
                self._one(step.same_as, "step", self.steps)
            for item in _items(step):
                self._item(item)

    def _item(self, item: Item) -> None:
        match item:
            case Act():
                self._act(item)
            case Check():
                self._check(item)
            case Caution(hazards=hazards):
                self.names.one_of(hazards, "hazard", self.device.hazards)
            case Use(what="tool", items=items):
                self._tools(items)
            case Use(items=items):
                self._materials(items)
            case Video(file=Said() as file):
                there(file, folders(file.span.source.path, self.models), self.around)
            case _:
                pass

    def _act(self, act: Act) -> None:
        self.names.things(act.targets, act.kind)
        self._tools(act.with_)
        if isinstance(act, FastenerAct) and act.screw_from is not None:
            self.names.things([act.screw_from], Kind.FASTENER)
        if isinstance(act, PartAct):
            self.names.things((*act.undo, *act.do_up), *_LINKS)
            self.names.things(act.first, Kind.JOINT)

    def _check(self, check: Check) -> None:
        self._functions(check.tests)
        self._tools(check.with_)
        ways = [fault.go for fault in check.faults]
        for go in [*ways, *([check.if_not] if check.if_not else [])]:
            if go.text in self.stages and go.text not in self.remedies:
                tell_unknown(
                    self.of_steps,
                    go,
                    "remedy",
                    self.remedies,
                    instead=f"give the stage `{go.text}` a `remedy:` in a `stage` block",
                )
            else:
                self._one(go, "remedy", self.remedies)

    def _one(self, said: Said, what: str, among: dict[str, Stage] | dict[str, Step]) -> None:
        if said.text not in among:
            tell_unknown(self.of_steps, said, what, among)

    def _functions(self, said: tuple[Said, ...]) -> None:
        self.names.one_of(said, "function", self.device.functions)

    def _tools(self, said: tuple[Said, ...]) -> None:
        if self.tools:
            self.names.one_of(said, "tool", self.tools)

    def _materials(self, said: tuple[Said, ...]) -> None:
        """A material is listed in tools.yaml, or a thing of the record that is renewed."""
        if self.tools:
            both = {**self.tools, **self.device.names}
            self.names.one_of(said, "material", both)


def _items(step: Step) -> Iterator[Item]:
    for item in step.flow:
        if isinstance(item, Fork):
            for method in item.methods:
                yield from method.items
        else:
            yield item


def _conditions(guide: Guide) -> Iterator[Condition | None]:
    yield from guide.exclude
    for stage in guide.stages:
        yield stage.when
        for step in stage.steps:
            yield step.when
            for item in step.flow:
                if isinstance(item, Fork):
                    for method in item.methods:
                        yield method.when
                        yield from map(_when, method.items)
                else:
                    yield _when(item)


def _when(item: Item) -> Condition | None:
    match item:
        case Act() | Caution() | Check() | Use() | Video() | Wait():
            return item.when
        case Points() | Picture() | Paragraph() | Bullets() | Quote():
            return None
