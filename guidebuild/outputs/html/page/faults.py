"""What can be wrong, and where to go back: from the checks' ways on, and by function from what carries it."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from guidebuild.device.acts import Verb
from guidebuild.device.things import Link
from guidebuild.outputs.html.page.checks import CheckView
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.step import StepView
from guidebuild.proof.mistake import Move
from guidebuild.translate.messages.text import Text

_CLOSING = frozenset({Verb.RECONNECT, Verb.CLOSE, Verb.REFIT, Verb.TIGHTEN})


@dataclass(frozen=True, slots=True)
class Fault:
    """`go`: (step id, number) in the order in which to look."""

    see: Text
    cause: Text
    go: tuple[tuple[str, str], ...]


def faults(reading: Reading, steps: Sequence[StepView]) -> tuple[Fault, ...]:
    """First what a check sends on, then each function with what carries it, then a screw left over."""
    told = [fault for step in steps for check in step.checks for fault in _of_check(reading, check)]
    return (*dict.fromkeys(told), *_by_function(reading))


def _of_check(reading: Reading, check: CheckView) -> Iterator[Fault]:
    for way in check.ways:
        if way.to is not None:
            if way.see:
                see = way.see
            elif check.measured is not None:
                see = reading.say("fault.outside", quantity=check.measured.quantity)
            else:
                see = reading.say("fault.not", expect=_bare(check.expect))
            yield Fault(see, way.title, ((way.to, way.number),))


def _bare(said: Text) -> Text:
    """A sentence without its full stop, to stand in another."""
    if said and said[-1].words.endswith("."):
        return (*said[:-1], replace(said[-1], words=said[-1].words[:-1]))
    return said


def _by_function(reading: Reading) -> Iterator[Fault]:
    """Each function that something opened in this guide carries: what to look at, and where it was closed."""
    for function, name in reading.device.functions.items():
        carriers = [
            thing.key
            for thing in reading.device.things.values()
            if isinstance(thing, Link)
            and thing.key in reading.labels.of_thing
            and function in {said.text for said in thing.carries}
        ]
        closed = {
            passage.step.id: None
            for passage in reading.proof.passages
            if passage.stage.remedy is None
            for one in passage.walked
            if isinstance(one.doing, Move)
            and one.doing.verb in _CLOSING
            and one.doing.thing in carriers
        }
        if carriers and closed:
            names = reading.say.listed([reading.named(key) for key in carriers], "or")
            yield Fault(
                see=reading.say("fault.function", function=name.text),
                cause=reading.say("fault.not-closed", names=names),
                go=tuple((id, reading.numbers.steps[id]) for id in closed),
            )
