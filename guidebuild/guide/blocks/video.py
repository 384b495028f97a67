"""`video`: a piece of a film."""

from dataclasses import dataclass, field
from decimal import Decimal

from guidebuild.device.condition import Condition
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Video:
    """`show` from and to, in seconds; `file` None means the guide's own film."""

    start: Decimal
    end: Decimal
    file: Said | None
    when: Condition | None
    span: Span = field(compare=False)
