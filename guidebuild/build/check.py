"""The whole check: read, prove, all rules, allows, settings; one result whatever the number of processes."""

from collections.abc import Callable
from pathlib import Path

from guidebuild.build.batch import Batch, run
from guidebuild.build.fault import told_once
from guidebuild.build.over_all import over
from guidebuild.build.place import Asked
from guidebuild.build.result import CheckResult
from guidebuild.build.settle import settle
from guidebuild.build.share import run_all
from guidebuild.read.files import folder, guide_paths
from guidebuild.read.report import Report

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

    `keep` leaves content and proofs in the result, for outputs; that works in one process.
    """
    asked = Asked(root, within)
    every = sorted(guide_paths(folder(root, Report())))
    mine = [path for path in every if asked.covers(path)]
    whole = (
        not within or not mine
    )  # of a record or a kit all guides are checked, and its own findings told
    paths = every if whole else mine
    if keep:
        batch = run(root, paths, lambda _: None, rest=whole, keep=True)
    else:
        batch = run_all(root, paths, whole, jobs, progress)
    return _result(batch, asked, whole, bool(mine))


def _result(batch: Batch, asked: Asked, whole: bool, guides: bool) -> CheckResult:
    outcomes = batch.outcomes
    over_all, faults = over(outcomes, batch.gathered) if whole else ([], [])
    beside = [found for outcome in outcomes for found in outcome.beside]
    slips = settle(outcomes, [*batch.other, *beside, *over_all], batch.settings, whole=whole)
    if not guides:
        slips = tuple(slip for slip in slips if asked.covers(slip.finding.span.source.path))
    proved = [outcome for outcome in outcomes if outcome.configurations]
    return CheckResult(
        slips=slips,
        faults=told_once([*batch.faults, *faults, *(f for each in outcomes for f in each.faults)]),
        guides=tuple(sorted(outcome.path for outcome in proved)),
        configurations=sum(outcome.configurations for outcome in proved),
        content=batch.content,
        proofs=tuple(batch.proofs),
    )
