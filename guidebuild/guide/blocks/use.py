"""`tool` and `material`: what a step uses that no act implies."""

from dataclasses import dataclass, field

from guidebuild.device.condition import Condition
from guidebuild.device.quantity import Quantity
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Use:
    """`what` is `tool` or `material`; `items` are ids of tools.yaml or materials of a kit."""

    what: str
    items: tuple[Said, ...]
    amount: Quantity | None  # a bare count has the unit ""
    when: Condition | None
    note: Said | None
    span: Span = field(compare=False)
