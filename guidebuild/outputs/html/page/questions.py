"""The questions that choose the configuration: only those whose answer changes something on this page."""

from collections.abc import Iterable
from dataclasses import dataclass

from guidebuild.device.option import Option
from guidebuild.outputs.html.page.reading import Reading


@dataclass(frozen=True, slots=True)
class Question:
    """`answers`: (value, label). `seen_in`: the step before which it can't be answered."""

    number: int
    option: str
    ask: str
    answers: tuple[tuple[str, str], ...]
    seen_in: str | None


def questions(reading: Reading) -> tuple[Question, ...]:
    """Those on which any condition that the page tells depends; call it when the page is made."""
    asked = reading.conditions.options_told()
    return tuple(_question(reading, option) for option in _options(reading) if option.id in asked)


def _options(reading: Reading) -> Iterable[Option]:
    return reading.guide.options


def _question(reading: Reading, option: Option) -> Question:
    ask = reading.say.plain(f"ask.{option.origin.value}", ask=option.ask.text)
    answers = tuple((value.id, value.label.text) for value in option.values)
    seen = option.seen_in.text if option.seen_in is not None else None
    return Question(reading.conditions.number(option.id), option.id, ask, answers, seen)
