"""`caution`: a safety message before the danger, the record's or the guide's own."""

from dataclasses import dataclass, field

from guidebuild.device.condition import Condition
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Caution:
    """Either `hazards` (ids of the record, from `for:`) or a `level` with its `hazard` in words."""

    hazards: tuple[Said, ...]
    level: Said | None  # the key as written: danger, warning, caution, notice
    hazard: Said | None
    result: Said | None
    avoid: tuple[Said, ...]
    when: Condition | None
    span: Span = field(compare=False)
