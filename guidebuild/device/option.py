"""A question whose answer chooses the configuration."""

from dataclasses import dataclass
from enum import Enum

from guidebuild.source.said import Said
from guidebuild.source.span import Span


class Origin(Enum):
    """Who asks."""

    DEVICE = "device"  # a fact of the unit in hand
    KIT = "kit"  # the form in which the part is supplied
    GUIDE = "guide"  # what the reader sees or chooses on the way
    MODEL = "model"  # which of several devices it is


@dataclass(frozen=True, slots=True)
class Value:
    """One answer: the id used in conditions and the words that the reader sees."""

    id: str
    label: Said


@dataclass(frozen=True, slots=True)
class Option:
    """`seen_in` names the step before which the question can't be answered."""

    id: str
    ask: Said
    values: tuple[Value, ...]
    origin: Origin
    span: Span
    seen_in: Said | None = None
