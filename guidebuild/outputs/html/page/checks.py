"""A check: what is expected, what was measured, and the ways on when it is not so."""

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from guidebuild.draw.gauge import gauge_svg
from guidebuild.guide.blocks.check import Check, Measure
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.when import When
from guidebuild.translate.messages.text import Text, text


@dataclass(frozen=True, slots=True)
class Way:
    """Where to go: `see` is what is seen instead; `to` a step's id, else `stop` says what to do."""

    see: Text
    to: str | None
    number: str
    title: Text
    tries: Text = ()
    stop: Text = ()
    when: When | None = None


@dataclass(frozen=True, slots=True)
class Measured:
    """What is measured, the range in words, and its limits for the script."""

    quantity: Text
    expected: Text
    least: Decimal | None
    most: Decimal | None
    unit: str
    gauge: str


@dataclass(frozen=True, slots=True)
class CheckView:
    """A check as it stands in its step."""

    id: str
    expect: Text
    measured: Measured | None
    ways: tuple[Way, ...]
    functions: str
    note: Text
    kind: str = "check"


def check_view(reading: Reading, check: Check, id: str, among: int) -> CheckView:
    """The check with its ways on, those that the proof found for its functions too."""
    between = reading.say.plain("list.between")
    functions = (reading.device.functions.get(said.text) for said in check.tests)
    return CheckView(
        id=id,
        expect=reading.author.words(check.expect),
        measured=_measured(reading, check.measure) if check.measure else None,
        ways=tuple(_ways(reading, check, among)),
        functions=between.join(name.text for name in functions if name is not None),
        note=reading.author.words(check.note),
    )


def _ways(reading: Reading, check: Check, among: int) -> Iterator[Way]:
    named = set()
    for fault in check.faults:
        named.add(fault.go.text)
        yield _to(reading, fault.go.text, reading.author.words(fault.see))
    if check.if_not is not None:
        named.add(check.if_not.text)
        yield _to(reading, check.if_not.text)
    for entry in reading.proof.entries:
        if entry.check is check and entry.remedy.id not in named:
            named.add(entry.remedy.id)
            yield _to(reading, entry.remedy.id, when=reading.when(entry.where, among))
    if check.stop is not None:
        yield Way((), None, "", (), stop=reading.author.words(check.stop))


def _to(reading: Reading, stage: str, see: Text = (), when: When | None = None) -> Way:
    found = next((one for one in reading.guide.stages if one.id == stage), None)
    first = reading.numbers.first_of(stage)
    if found is None or first is None:
        return Way(see, None, "", text(stage), when=when)
    number = reading.numbers.steps[first]
    tries: Text = ()
    if found.remedy is not None and found.remedy.tries:
        tries = reading.say("check.tries", count=found.remedy.tries)
    return Way(
        see,
        first,
        number,
        reading.author.words(found.title),
        tries,
        reading.author.words(found.then),
        when,
    )


def _measured(reading: Reading, measure: Measure) -> Measured:
    say = reading.say
    least, most = measure.least, measure.most
    if least is not None and most is not None:
        high = say.quantity(most, measure.unit)
        expected: Text = say("range.between", low=say.number(least), high=high)
    elif most is not None:
        expected = say("range.at-most", limit=say.quantity(most, measure.unit))
    elif least is not None:
        expected = say("range.at-least", limit=say.quantity(least, measure.unit))
    else:
        expected = ()
    gauge = gauge_svg(_float(least), _float(most), measure.unit, say.figure) if expected else ""
    return Measured(
        reading.author.words(measure.quantity), expected, least, most, measure.unit, gauge
    )


def _float(value: Decimal | None) -> float | None:
    return None if value is None else float(value)
