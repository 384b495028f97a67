"""What came of some guides together, and of what stands around them."""

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any

from guidebuild.build.outcome import Outcome
from guidebuild.guide.settings import Settings
from guidebuild.reports.parts.report import Fault
from guidebuild.source.finding import Finding

if TYPE_CHECKING:  # slow to load, and most batches have neither
    from guidebuild.guide.content import Content
    from guidebuild.proof.proof import Proof


@dataclass(slots=True)
class Batch:
    """`other`: what was found outside of guides and what they draw on; `gathered`: what that says to rules.

    `content` and `proofs` only where they are to be kept.
    """

    settings: Settings = field(default_factory=Settings)
    outcomes: list[Outcome] = field(default_factory=list)
    other: list[Finding] = field(default_factory=list)
    gathered: list[tuple[str, Any]] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    content: "Content | None" = None
    proofs: list["Proof"] = field(default_factory=list)

    def add(self, more: "Batch") -> None:
        """Put another batch of the same content behind this one."""
        self.settings = more.settings
        self.outcomes += more.outcomes
        self.other += more.other
        self.gathered += more.gathered
        self.faults += more.faults
