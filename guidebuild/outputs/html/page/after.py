"""After the work: what must be so, what was renewed, what to do, what to write down."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from guidebuild.device.acts import REPLACING
from guidebuild.device.things import Part, Store
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.step import StepView
from guidebuild.proof.mistake import Move
from guidebuild.proof.questions.changed import Unset, left_unset
from guidebuild.translate.messages.text import Text, joined, text


@dataclass(frozen=True, slots=True)
class FinalCheck:
    """`step`: where it is done, None where it is only looked at; `tick` is the id of its box."""

    id: str
    expect: Text
    step: tuple[str, str] | None


@dataclass(frozen=True, slots=True)
class Field:
    """A line of the job record: its id and label."""

    id: str
    label: Text


@dataclass(frozen=True, slots=True)
class AfterCare:
    """`screws`: how many are to be counted back, 0 where none comes out."""

    checks: tuple[FinalCheck, ...]
    renewed: Text
    care: tuple[Text, ...]
    fields: tuple[Field, ...]


def after_care(reading: Reading, steps: Sequence[StepView]) -> AfterCare:
    """All of it, from the record, the walk and the author's `after`."""
    return AfterCare(
        checks=tuple(_checks(reading, steps)),
        renewed=_renewed(reading),
        care=tuple(dict.fromkeys(_care(reading))),
        fields=tuple(_fields(reading)),
    )


def _checks(reading: Reading, steps: Sequence[StepView]) -> Iterator[FinalCheck]:
    if reading.labels.screws:
        yield FinalCheck("final.tray", reading.say("after.tray-empty"), None)
    for step in steps:
        if step.passage.stage.remedy is None:
            for check in step.checks:
                if check.functions:
                    yield FinalCheck(f"final.{check.id}", check.expect, (step.id, step.number))


def _renewed(reading: Reading) -> Text:
    """`A print head LP2-110 …`: goal parts and single-use things."""
    keys = {
        one.doing.thing: None
        for passage in reading.proof.passages
        if passage.stage.remedy is None
        for one in passage.walked
        if isinstance(one.doing, Move) and one.doing.verb in REPLACING
    }
    return reading.say.listed([reading.named(key) for key in keys]) if keys else ()


def _care(reading: Reading) -> Iterator[Text]:
    for said in reading.guide.after:
        yield reading.author.words(said)
    for said in reading.guide.goal.parts:
        for key in reading.device.names.get(said.text, ()):
            part = reading.device.things[key]
            if isinstance(part, Part) and reading.guide.goal.verb in ("replace", "remove"):
                yield from _waste(reading, part)
    for unset in left_unset(reading.proof):
        yield _to_set(reading, unset)


def _to_set(reading: Reading, unset: Unset) -> Text:
    """`Set the density (new: print head).`: what the record wants, and no step does."""
    store = reading.device.things[unset.store]
    assert isinstance(store, Store)
    key = f"act.store.restore.{store.store}"
    known = key if reading.say.has(key) else "act.store.restore.any"
    do = reading.say(known, name=reading.inside(reading.store_name(store)))
    said = reading.say("after.set", do=do, name=reading.inside(reading.name(unset.part)))
    when = reading.when(unset.where, reading.configurations.everywhere)
    if when is None:
        return said
    return joined([said, reading.say("condition.only", words=when.words)], " ")


def _waste(reading: Reading, part: Part) -> Iterator[Text]:
    if part.waste is not None:
        key = f"waste.{part.waste.text}"
        waste = reading.say.plain(key) if reading.say.has(key) else part.waste.text
        name = reading.inside(reading.name(part.key))
        yield reading.say("after.waste", name=name, waste=waste)


def _fields(reading: Reading) -> Iterator[Field]:
    yield Field("serial", reading.say("record.serial"))
    for part in reading.device.parts:
        if part.serial:
            name = text(reading.inside(reading.name(part.key)))
            yield Field(f"serial.{part.id}", reading.say("record.serial-of", name=name))
    yield Field("date", reading.say("record.date"))
    yield Field("who", reading.say("record.who"))
