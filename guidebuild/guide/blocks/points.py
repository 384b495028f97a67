"""`points`: free marks on the picture above."""

from dataclasses import dataclass, field
from decimal import Decimal

from guidebuild.source.span import Span

Place = tuple[Decimal, Decimal]


@dataclass(frozen=True, slots=True)
class Points:
    """Places in per cent of width and height. `keep_out` is two corners; an arrow two or more places."""

    here: tuple[Place, ...]
    keep_out: tuple[tuple[Place, Place], ...]
    arrow: tuple[tuple[Place, ...], ...]
    span: Span = field(compare=False)
