"""`fastener`: remove, loosen, start, tighten, refit, renew."""

from dataclasses import dataclass

from guidebuild.device.things import Torque
from guidebuild.guide.blocks.act import Act
from guidebuild.source.said import Said


@dataclass(frozen=True, slots=True, kw_only=True)
class FastenerAct(Act):
    """`screw_from`: the hole whose screw goes in here instead of this hole's own."""

    torque: Torque | None = None
    sequence: Said | None = None  # cross, listed
    screw_from: Said | None = None
