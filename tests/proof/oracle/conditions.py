"""Whether a condition holds, given one answer to each option."""

from collections.abc import Mapping, Sequence
from typing import TypeVar

from guidebuild.device.condition import Both, Condition, Either, Is, Not
from guidebuild.device.things import Case

Answers = Mapping[str, str]
T = TypeVar("T")


def holds(condition: Condition | None, answers: Answers) -> bool:
    """A condition on an option that nobody asks holds: the reader has told it."""
    match condition:
        case None:
            return True
        case Is(option, values):
            return option not in answers or answers[option] in values
        case Not(of):
            return not holds(of, answers)
        case Both(parts):
            return all(holds(part, answers) for part in parts)
        case Either(parts):
            return any(holds(part, answers) for part in parts)


def first_that_holds(cases: Sequence[Case[T]], answers: Answers) -> T | None:
    """The first of several values whose condition holds."""
    return next((case.value for case in cases if holds(case.when, answers)), None)
