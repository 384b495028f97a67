"""`part`: lift, lower, remove, offer, refit, exchange, renew, add."""

from dataclasses import dataclass

from guidebuild.device.quantity import Quantity
from guidebuild.guide.blocks.act import Act
from guidebuild.source.said import Said


@dataclass(frozen=True, slots=True, kw_only=True)
class PartAct(Act):
    """`undo`: what is opened before it leaves, in this order; `do_up`: what is closed after it is on."""

    undo: tuple[Said, ...] = ()
    do_up: tuple[Said, ...] = ()
    support: Said | None = None
    angle: Quantity | None = None
    first: tuple[Said, ...] = ()
