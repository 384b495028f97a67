"""The return sheet: what goes back, what was seen, at which step, what was measured. It goes with the part."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from guidebuild.device.acts import REPLACING
from guidebuild.device.things import Part
from guidebuild.outputs.html.page.faults import Fault
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.step import StepView
from guidebuild.proof.mistake import Move
from guidebuild.translate.messages.text import Text, text


@dataclass(frozen=True, slots=True)
class Value:
    """What a check measures: the step's address, and the `id` of the field where the reader wrote it."""

    code: str
    quantity: Text
    expected: Text
    unit: str
    id: str


@dataclass(frozen=True, slots=True)
class ReturnSheet:
    """`goes` and `seen` are there to be ticked; `kits` have a batch."""

    goes: tuple[Text, ...]
    seen: tuple[Text, ...]
    kits: tuple[Text, ...]
    values: tuple[Value, ...]


def return_sheet(
    reading: Reading, steps: Sequence[StepView], faults: Sequence[Fault]
) -> ReturnSheet:
    """From the walk, the checks and the faults of the page."""
    return ReturnSheet(
        goes=tuple(_goes(reading)),
        seen=tuple(dict.fromkeys(fault.see for fault in faults)),
        kits=tuple(text(reading.inside(kit.name.text)) for kit in reading.kits),
        values=tuple(_values(steps)),
    )


def _goes(reading: Reading) -> Iterator[Text]:
    """The parts that are changed, old and new: either may be what is complained of."""
    changed = {
        one.doing.thing: None
        for passage in reading.proof.passages
        for one in passage.walked
        if isinstance(one.doing, Move) and one.doing.verb in REPLACING
    }
    for key in changed:
        if isinstance(reading.device.things[key], Part):
            name = reading.named(key)
            yield reading.say("return.old", name=name)
            yield reading.say("return.new", name=name)
    yield reading.say("return.device")


def _values(steps: Sequence[StepView]) -> Iterator[Value]:
    for step in steps:
        for check in step.checks:
            if check.measured is not None:
                one = check.measured
                yield Value(step.code, one.quantity, one.expected, one.unit, f"{check.id}.v")
