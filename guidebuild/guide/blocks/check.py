"""`check`: something is looked at, tried or measured, and there is a way on when it is not as expected."""

from dataclasses import dataclass, field
from decimal import Decimal

from guidebuild.device.condition import Condition
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Measure:
    """`quantity` in words ("voltage between M1 and M2"), limits in `unit`; either limit may be missing."""

    quantity: Said
    least: Decimal | None
    most: Decimal | None
    unit: str
    span: Span = field(compare=False)


@dataclass(frozen=True, slots=True)
class Fault:
    """What may be seen instead, and the stage that mends it."""

    see: Said
    go: Said


@dataclass(frozen=True, slots=True)
class Check:
    """Ways on: `if_not` (a remedy's id), `faults`, or `stop` (do not go on, in words)."""

    expect: Said
    tests: tuple[Said, ...]
    measure: Measure | None
    powered: bool
    if_not: Said | None
    faults: tuple[Fault, ...]
    stop: Said | None
    when: Condition | None
    note: Said | None
    span: Span = field(compare=False)
    with_: tuple[Said, ...] = ()  # tools, any of them
