"""What came of a check."""

from collections import Counter
from dataclasses import dataclass
from typing import TYPE_CHECKING

from guidebuild import __version__
from guidebuild.build import rulebook
from guidebuild.build.since import new
from guidebuild.reports.parts.identity import Identity
from guidebuild.reports.parts.report import Fault, Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Finding

if TYPE_CHECKING:  # slow to load, and a check that finds all in its cache needs neither
    from guidebuild.guide.content import Content
    from guidebuild.proof.proof import Proof


@dataclass(frozen=True, slots=True)
class CheckResult:
    """`slips` in the order of a report. `content` and `proofs` (by the guides' order) only where kept."""

    slips: tuple[Slip, ...]
    faults: tuple[Fault, ...]
    guides: tuple[str, ...]
    configurations: int
    unproved: tuple[str, ...] = ()
    content: "Content | None" = None
    proofs: "tuple[Proof, ...]" = ()

    @property
    def findings(self) -> tuple[Finding, ...]:
        """What was found, without what the settings made of it."""
        return tuple(slip.finding for slip in self.slips)

    def report(self, prefix: str = "", earlier: Counter[Identity] | None = None) -> Report:
        """The result as reports take it: paths seen from `prefix`, only what is new against `earlier`."""
        slips = self.slips if earlier is None else new(self.slips, earlier)
        names = {slip.finding.rule for slip in slips}
        return Report(
            version=__version__,
            slips=slips,
            faults=self.faults,
            guides=self.guides,
            unproved=self.unproved,
            configurations=self.configurations,
            cards={name: rulebook.card(name) for name in sorted(names & set(rulebook.names()))},
            prefix=prefix,
            known=len(self.slips) - len(slips),
        )
