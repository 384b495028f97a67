"""Some of a content folder's guides read, proved and put before all rules: what one process does."""

from collections.abc import Callable, Collection
from dataclasses import dataclass, field
from pathlib import Path

from guidebuild.build import rulebook
from guidebuild.build.fault import fault
from guidebuild.build.outcome import Outcome
from guidebuild.build.work import work
from guidebuild.proof.proof import Proof
from guidebuild.read.content import Content, read_content
from guidebuild.reports.parts.report import Fault
from guidebuild.source.finding import Finding

Progress = Callable[[int], None]  # so many guides more are done


@dataclass(slots=True)
class Batch:
    """`other`: what was found outside of guides. `content` and `proofs` are kept only where they are wanted."""

    outcomes: list[Outcome] = field(default_factory=list)
    other: list[Finding] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    content: Content | None = None
    proofs: list[Proof] = field(default_factory=list)


def run(root: Path, only: Collection[str] | None, progress: Progress, keep: bool = False) -> Batch:
    """Read what is asked for and work on each guide of it; nothing that goes wrong in one stops another."""
    batch = Batch()
    try:
        content, read = read_content(root, only)
    except Exception as error:
        batch.faults.append(fault(error))
        return batch
    rules = tuple(rulebook.entries())
    of_guide = _shared_out(content, read, batch)
    for each in content.guides:
        outcome, proof = work(each, content, rules, of_guide.get(each.guide.path, ()))
        batch.outcomes.append(outcome)
        if keep and proof is not None:
            batch.proofs.append(proof)
        progress(1)
    batch.content = content if keep else None
    return batch


def _shared_out(content: Content, read: list[Finding], batch: Batch) -> dict[str, list[Finding]]:
    """The reader's findings by guide: a shared stage's to each guide that uses it, the rest to `other`."""
    users: dict[str, list[str]] = {}
    for each in content.guides:
        for file in {each.guide.path, *(stage.file for stage in each.guide.stages if stage.file)}:
            users.setdefault(file, []).append(each.guide.path)
    shared: dict[str, list[Finding]] = {}
    for found in read:
        for user in users.get(found.span.source.path, ()):
            shared.setdefault(user, []).append(found)
        if found.span.source.path not in users:
            batch.other.append(found)
    return shared
