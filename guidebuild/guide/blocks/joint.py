"""`joint`: release, renew, close."""

from dataclasses import dataclass

from guidebuild.device.quantity import Quantity
from guidebuild.guide.blocks.act import Act


@dataclass(frozen=True, slots=True, kw_only=True)
class JointAct(Act):
    """`heat` and `max_depth` belong to a release; `press` and `cure` (times) to a renewal."""

    heat: Quantity | None = None
    max_depth: Quantity | None = None
    press: Quantity | None = None
    cure: Quantity | None = None
