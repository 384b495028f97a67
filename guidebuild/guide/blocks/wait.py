"""`wait`: time that must pass."""

from dataclasses import dataclass, field

from guidebuild.device.condition import Condition
from guidebuild.device.quantity import Quantity
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Wait:
    """`time` in seconds, whatever the author wrote (`2m10s` is 130 s)."""

    time: Quantity
    reason: Said | None
    when: Condition | None
    span: Span = field(compare=False)
