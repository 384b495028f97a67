"""A number with a unit, as the author wrote it."""

from dataclasses import dataclass, field
from decimal import Decimal

from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Quantity:
    """`0.30 N·m`: the value exactly as written, the unit in the author's spelling."""

    value: Decimal
    unit: str
    span: Span = field(compare=False)
