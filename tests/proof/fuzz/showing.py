"""A case in a few lines, for whoever has to find out why the two disagree."""

from collections.abc import Iterator

from guidebuild.device.condition import Both, Condition, Either, Is, Not
from guidebuild.device.things import Connector, Hole, Joint, Link, Part, Store, Thing
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.step import Fork, Item
from tests.proof.fuzz.case import Case


def show(case: Case) -> str:
    """The device, then the guide; numbers are places."""
    return "\n".join([*_device(case), "", *_guide(case)])


def _device(case: Case) -> Iterator[str]:
    for thing in case.device.things.values():
        yield f"{thing.key}: {', '.join(_thing(thing))}{_when(thing.when)}"


def _thing(thing: Thing) -> Iterator[str]:
    match thing:
        case Part():
            yield f"on {thing.host}"
            yield from (["packing"] if thing.packing else [])
        case Link():
            yield f"ties {_ids(thing.ends)}"
            yield from ([f"guards {_ids(thing.guards)}"] if thing.guards else [])
        case Store():
            yield f"in {thing.inside} through {thing.through} filled by {_ids(thing.filled_by)}"
            yield f"emptied by {_ids(thing.emptied_by)} guards {_ids(thing.guards)}"
    match thing:
        case Hole(captive=True):
            yield "captive"
        case Joint():
            yield thing.joint
        case Connector():
            yield f"{'source ' if thing.source else ''}{thing.live}"
    if thing.behind or not thing.behind_inherits:
        yield f"behind {_ids(thing.behind) or 'nothing'}"
    if thing.at is not None:
        yield f"at {thing.at}"
    if thing.single_use:
        yield "single-use"
    if thing.starts is not None:
        yield f"starts {thing.starts!r}"


def _guide(case: Case) -> Iterator[str]:
    guide = case.guide
    asked = {option.id: [value.id for value in option.values] for option in guide.options}
    yield f"goal {guide.goal.verb} {_ids(guide.goal.parts)}; options {asked}"
    yield f"exclude {[_words(one) for one in guide.exclude]}; starts {guide.starts}; ends {guide.ends}"
    for use in guide.kits:
        for form in use.kit.forms:
            yield f"kit brings {_ids(use.kit.brings)} as {form.id!r} with {_ids(form.arrives_with)}"
    for stage in guide.stages:
        remedy = stage.remedy
        mends = f" for {_ids(remedy.functions)}, resume {remedy.resume}" if remedy else ""
        yield f"# {stage.id}{_when(stage.when)}{mends}"
        for step in stage.steps:
            optional = " optional" if step.optional else ""
            repeats = f" same as {step.same_as}" if step.same_as else ""
            yield f"## {step.id}{_when(step.when)}{optional}{repeats}"
            for item in step.flow:
                yield from _item(item)


def _item(item: Item | Fork) -> Iterator[str]:
    match item:
        case Act():
            extra = (
                f" undo {_ids(item.undo)} do up {_ids(item.do_up)}"
                if isinstance(item, PartAct)
                else ""
            )
            places = [said.span.start for said in item.targets]
            yield f"  {item.verb.value} {_ids(item.targets)}{extra} {places}{_when(item.when)}"
        case Check():
            ways = f"if not {item.if_not}, faults {[str(one.go) for one in item.faults]}, stop {item.stop}"
            yield f"  check {_ids(item.tests)} powered {item.powered} {ways} {[item.span.start]}{_when(item.when)}"
        case Fork():
            for method in item.methods:
                yield f"  ### method{_when(method.when)} {[item.span.start]}"
                for one in method.items:
                    yield from ("  " + line for line in _item(one))
        case _:
            pass


def _ids(said: object) -> str:
    return " ".join(str(one) for one in said)  # type: ignore[attr-defined]


def _when(condition: Condition | None) -> str:
    return "" if condition is None else f" when {_words(condition)}"


def _words(condition: Condition) -> str:
    match condition:
        case Is(option, values):
            return f"{option} in {sorted(values)}"
        case Not(of):
            return f"not ({_words(of)})"
        case Both(of):
            return "(" + " and ".join(_words(one) for one in of) + ")"
        case Either(of):
            return "(" + " or ".join(_words(one) for one in of) + ")"
