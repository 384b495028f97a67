"""A tool or material as tools.yaml lists it."""

from dataclasses import dataclass, field

from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Tool:
    """`fits`: the drives that a driver fits (`TX8`). `basic`: every bench has it, no kit brings it."""

    id: str
    name: Said
    span: Span = field(compare=False)
    material: bool = False
    fits: tuple[Said, ...] = ()
    size: Said | None = None
    basic: bool = False
