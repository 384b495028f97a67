"""What came of one guide: all that is kept of it after it was proved."""

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from guidebuild.reports.parts.report import Fault
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Finding

if TYPE_CHECKING:
    from guidebuild.guide.guide import Allow


@dataclass(frozen=True, slots=True)
class Outcome:
    """All that a check needs of a guide afterwards; nothing in it holds on to the guide itself.

    `slips` are before allows and settings had their say; `loudness` in them is not yet meant. `beside`: what the
    reader found in the records and kits that the guide draws on. `gathered`: what rules about all guides
    together want to know of this one. `files`: all that went into it. `read`: the reader made a guide of it.
    """

    path: str
    status: str
    whole: tuple[str, int, int]  # the guide's own span, as path, start, end
    allows: tuple["Allow", ...]
    configurations: int = 0
    slips: tuple[Slip, ...] = ()
    faults: tuple[Fault, ...] = ()
    beside: tuple[Finding, ...] = ()
    gathered: tuple[tuple[str, Any], ...] = ()
    files: tuple[str, ...] = ()
    read: bool = True
