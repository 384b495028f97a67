"""The whole check: read, prove, all rules, allows, settings; one result whatever the number of processes."""

from collections.abc import Callable
from pathlib import Path

from guidebuild.build.result import CheckResult

Progress = Callable[[int, int], None]  # guides done, of how many


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
