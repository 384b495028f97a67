"""The whole check: read, prove, all rules, allows, settings; one result whatever the number of processes."""

from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from guidebuild import __version__
from guidebuild.build import rulebook
from guidebuild.build.since import new
from guidebuild.proof.proof import Proof
from guidebuild.read.content import Content
from guidebuild.reports.parts.identity import Identity
from guidebuild.reports.parts.report import Fault, Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Finding

Progress = Callable[[int, int], None]  # guides done, of how many


@dataclass(frozen=True, slots=True)
class CheckResult:
    """`slips` in the order of a report. `content` and `proofs` (by the guides' order) only where kept."""

    slips: tuple[Slip, ...]
    faults: tuple[Fault, ...]
    guides: tuple[str, ...]
    configurations: int
    content: Content | None = None
    proofs: tuple[Proof, ...] = ()

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
            configurations=self.configurations,
            cards={name: rulebook.card(name) for name in sorted(names & set(rulebook.names()))},
            prefix=prefix,
            known=len(self.slips) - len(slips),
        )


def check(
    root: Path,
    within: str = "",
    *,
    jobs: int | None = None,
    keep: bool = False,
    progress: Progress = lambda done, total: None,
) -> CheckResult:
    """Check a content folder, or what lies `within` it (a content path).

    `keep` leaves content and proofs in the result, for outputs; it works in one process.
    """
    ...
