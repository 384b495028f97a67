"""`store`: release (discharge, relax, drain, let cool) and restore."""

from dataclasses import dataclass

from guidebuild.device.quantity import Quantity
from guidebuild.guide.blocks.act import Act
from guidebuild.source.said import Said


@dataclass(frozen=True, slots=True, kw_only=True)
class StoreAct(Act):
    """`hold`: how long it takes; `by`: how it is done, in words."""

    hold: Quantity | None = None
    by: Said | None = None
