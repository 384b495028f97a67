"""`power`: switch-off, switch-on. Its one target is the device."""

from dataclasses import dataclass

from guidebuild.device.quantity import Quantity
from guidebuild.guide.blocks.act import Act


@dataclass(frozen=True, slots=True, kw_only=True)
class PowerAct(Act):
    """`hold`: how long the key is held."""

    hold: Quantity | None = None
