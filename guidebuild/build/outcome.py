"""What came of one guide: all that is kept of it after it was proved."""

from dataclasses import dataclass

from guidebuild.guide.guide import Allow
from guidebuild.reports.parts.report import Fault
from guidebuild.reports.parts.slip import Slip


@dataclass(frozen=True, slots=True)
class Outcome:
    """All that a check needs of a guide afterwards; nothing in it holds on to the guide itself.

    `slips` are before allows and settings had their say; `loudness` in them is not yet meant.
    """

    path: str
    status: str
    whole: tuple[str, int, int]  # the guide's own span, as path, start, end
    allows: tuple[Allow, ...]
    configurations: int = 0
    slips: tuple[Slip, ...] = ()
    faults: tuple[Fault, ...] = ()
