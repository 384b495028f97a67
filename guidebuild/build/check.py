"""The whole check: read, prove, all rules, allows, settings; one result whatever the number of processes."""

from collections.abc import Callable, Collection, Iterable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from guidebuild.build.batch import Batch
from guidebuild.build.cache.cache import Cache, opened
from guidebuild.build.cache.digests import WORLD
from guidebuild.build.fault import told_once
from guidebuild.build.outcome import Outcome
from guidebuild.build.over_all import over
from guidebuild.build.place import Asked
from guidebuild.build.result import CheckResult
from guidebuild.build.settle import settle
from guidebuild.read.files import folder, guide_paths
from guidebuild.read.report import Report
from guidebuild.source.finding import Finding

Progress = Callable[[int, int], None]  # guides done, of how many


@dataclass(frozen=True, slots=True)
class _Task:
    """What is to be done. `whole`: all guides and what no guide draws on. `mine`: guides were asked for."""

    asked: Asked
    every: tuple[str, ...]
    paths: tuple[str, ...]
    whole: bool
    mine: bool


def check(
    root: Path,
    within: str = "",
    *,
    jobs: int | None = None,
    cache: bool = True,
    progress: Progress = lambda done, total: None,
) -> CheckResult:
    """Check a content folder, or what lies `within` it (a content path).

    With `cache`, what an earlier check found of the same content is not worked out again.
    """
    files = folder(root, Report())
    task = _task(Asked(root, within), sorted(guide_paths(files)))
    if not cache:
        return _result(_fresh(task, task.paths, task.whole, jobs, progress), task)
    known = opened(root, files.files)
    if not within and (result := known.whole(task.every)):
        return result
    result = _result(_with_cache(known, task, jobs, progress), task)
    if not within:
        known.keep_whole(task.every, result)
    known.save(task.every)
    return result


def check_and_keep(
    root: Path, progress: Progress = lambda done, total: None, only: Collection[str] | None = None
) -> CheckResult:
    """Check a whole content folder and leave content and proofs in the result, for outputs.

    `only`: these guides and those of which nothing is known; of the others, what an earlier check found is told.
    """
    from guidebuild.build.run import run

    files = folder(root, Report())
    task = _task(Asked(root, ""), sorted(guide_paths(files)))
    known = opened(root, files.files)
    there = [] if only is None else [path for path in task.paths if path not in only]
    outcomes, beside = known.outcomes(there), known.beside() if there else None
    missing = [path for path in task.paths if path not in outcomes]
    done = iter(range(1, len(missing) + 1))
    rest = beside is None
    batch = run(root, missing, lambda _: progress(next(done), len(missing)), rest=rest, keep=True)
    around = (batch.settings, batch.other, batch.gathered)
    known.keep(batch.outcomes, around if rest and not batch.faults else None)
    _join(batch, beside, outcomes.values(), whole=True)
    result = _result(batch, task)
    known.keep_whole(task.every, replace(result, content=None, proofs=()))
    known.save(task.every)
    return result


def _join(
    batch: Batch, beside: tuple[Any, ...] | None, outcomes: Iterable[Outcome], *, whole: bool
) -> None:
    """Put what was known to what was worked out."""
    if beside is not None:
        settings, other, gathered = beside
        batch.settings = settings
        batch.other += other if whole else [one for one in other if _is_for_all(one)]
        batch.gathered += gathered
    batch.outcomes += outcomes


def result_of(batch: Batch, *, whole: bool) -> CheckResult:
    """What a batch comes to; `whole`: all guides are in it, so that what looks at all of them may speak."""
    paths = tuple(outcome.path for outcome in batch.outcomes)
    return _result(batch, _Task(Asked(Path(), ""), paths, paths, whole, True))


def _task(asked: Asked, every: Sequence[str]) -> _Task:
    """Of a record or a kit all guides are checked, and its own findings told."""
    mine = tuple(path for path in every if asked.covers(path))
    whole = not asked.within or not mine
    return _Task(asked, tuple(every), tuple(every) if whole else mine, whole, bool(mine))


def _fresh(
    task: _Task, paths: Sequence[str], rest: bool, jobs: int | None, progress: Progress
) -> Batch:
    """Worked out anew; what reads and proves is loaded only here, as loading takes longer than a cached check."""
    from guidebuild.build.share import run_all

    return run_all(task.asked.root, paths, rest, jobs, progress)


def _with_cache(known: Cache, task: _Task, jobs: int | None, progress: Progress) -> Batch:
    """Only what is not known is worked out, and kept for the next time."""
    outcomes = known.outcomes(task.paths)
    beside = known.beside()
    missing = [path for path in task.paths if path not in outcomes]
    batch = Batch()
    if missing or beside is None:
        rest = task.whole and beside is None
        batch = _fresh(task, missing, rest, jobs, progress)
        around = (batch.settings, batch.other, batch.gathered)
        known.keep(batch.outcomes, around if rest and not batch.faults else None)
    _join(batch, beside, outcomes.values(), whole=task.whole)
    return batch


def _is_for_all(found: Finding) -> bool:
    """Whether a finding stands in what holds for all guides; a part of the content has these, too."""
    return found.span.source.path in WORLD


def _result(batch: Batch, task: _Task) -> CheckResult:
    outcomes = batch.outcomes
    over_all, faults = over(outcomes, batch.gathered) if task.whole else ([], [])
    told = {file for outcome in outcomes for file in outcome.files}
    other = [found for found in batch.other if found.span.source.path not in told]
    beside = [found for outcome in outcomes for found in outcome.beside]
    found = [*other, *beside, *over_all]
    slips = settle(outcomes, found, batch.settings, whole=task.whole)
    if not task.mine:
        slips = tuple(slip for slip in slips if task.asked.covers(slip.finding.span.source.path))
    proved = [outcome for outcome in outcomes if outcome.configurations]
    return CheckResult(
        slips=slips,
        faults=told_once([*batch.faults, *faults, *(f for each in outcomes for f in each.faults)]),
        guides=tuple(sorted(outcome.path for outcome in proved)),
        configurations=sum(outcome.configurations for outcome in proved),
        unproved=tuple(sorted(each.path for each in outcomes if not each.configurations)),
        content=batch.content,
        proofs=tuple(batch.proofs),
    )
