"""Some of a content folder's guides read, proved and put before all rules: what one process does."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from guidebuild.build import rulebook
from guidebuild.build.fault import fault
from guidebuild.build.outcome import Outcome
from guidebuild.build.pictures import with_pictures
from guidebuild.build.tell import finding
from guidebuild.build.work import work
from guidebuild.guide.content import Content
from guidebuild.guide.settings import Settings
from guidebuild.proof.proof import Proof
from guidebuild.read.content import read_content
from guidebuild.reports.parts.report import Fault
from guidebuild.source.finding import Finding

Progress = Callable[[int], None]  # so many guides more are done


@dataclass(slots=True)
class Batch:
    """`other`: what was found outside of guides. `content` and `proofs` only where they are to be kept."""

    settings: Settings = field(default_factory=Settings)
    outcomes: list[Outcome] = field(default_factory=list)
    other: list[Finding] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    content: Content | None = None
    proofs: list[Proof] = field(default_factory=list)

    def add(self, more: "Batch") -> None:
        """Put another batch of the same content behind this one."""
        self.settings = more.settings
        self.outcomes += more.outcomes
        self.other += more.other
        self.faults += more.faults


def run(
    root: Path, paths: Sequence[str], progress: Progress, *, rest: bool = False, keep: bool = False
) -> Batch:
    """Read these guides and work on each; `rest`: read also what no guide draws on.

    Where the reader falls over, it is tried again guide by guide, so that one file hides no other.
    """
    try:
        content, read = read_content(root, paths, rest)
        content = with_pictures(root, content)
    except Exception as error:
        return _one_by_one(root, paths, progress, error, rest)
    batch = Batch(content.settings)
    rules = tuple(rulebook.entries())
    of_guide = _shared_out(content, read, batch)
    for each in content.guides:
        outcome, proof = work(each, content, rules, of_guide.get(each.guide.path, ()))
        batch.outcomes.append(outcome)
        if keep and proof is not None:
            batch.proofs.append(proof)
        progress(1)
    if rest:
        _all_together(content, batch)
    batch.content = content if keep else None
    return batch


def _one_by_one(
    root: Path, paths: Sequence[str], progress: Progress, error: Exception, rest: bool
) -> Batch:
    """Each guide alone, then what no guide draws on, where that is not what fell over already."""
    if len(paths) + rest <= 1:
        return Batch(faults=[fault(error, path="".join(paths))])
    batch = Batch()
    for path in paths:
        batch.add(run(root, [path], progress))
    if rest:
        batch.add(run(root, [], progress, rest=True))
    return batch


def _shared_out(content: Content, read: list[Finding], batch: Batch) -> dict[str, list[Finding]]:
    """The reader's findings by guide: a shared stage's to each guide that uses it, the rest to `other`."""
    users: dict[str, list[str]] = {}
    for each in content.guides:
        for file in each.files:
            users.setdefault(file, []).append(each.guide.path)
    shared: dict[str, list[Finding]] = {}
    for found in read:
        for user in users.get(found.span.source.path, ()):
            shared.setdefault(user, []).append(found)
        if found.span.source.path not in users:
            batch.other.append(found)
    return shared


def _all_together(content: Content, batch: Batch) -> None:
    """The rules that look at all guides at once."""
    for rule in rulebook.entries():
        try:
            for hit in rule.check_content(content) if rule.check_content else ():
                batch.other.append(finding(rule, hit))
        except Exception as error:
            batch.faults.append(fault(error, rule.name))
