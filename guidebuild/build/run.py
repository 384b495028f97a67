"""Some of a content folder's guides read, proved and put before all rules: what one process does."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from pathlib import Path

from guidebuild.build import rulebook
from guidebuild.build.batch import Batch
from guidebuild.build.fault import fault
from guidebuild.build.rulebook import Entry
from guidebuild.build.unswept import unswept
from guidebuild.build.work import unread, work
from guidebuild.guide.content import Content, GuideRead
from guidebuild.read.content import read_content
from guidebuild.source.finding import Finding

Progress = Callable[[int], None]  # so many guides more are done

_TEXTS = (".md", ".yaml", ".po")


def run(
    root: Path, paths: Sequence[str], progress: Progress, *, rest: bool = False, keep: bool = False
) -> Batch:
    """Read these guides and work on each; `rest`: read also what no guide draws on.

    Where the reader falls over, it is tried again guide by guide, so that one file hides no other.
    """
    with unswept():
        return _run(root, paths, progress, rest, keep)


def _run(root: Path, paths: Sequence[str], progress: Progress, rest: bool, keep: bool) -> Batch:
    try:
        content, read = read_content(root, paths, rest)
        content = _with_pictures(root, content)
    except Exception as error:
        return _one_by_one(root, paths, progress, error, rest)
    batch = Batch(content.settings, content=content if keep else None)
    found = _by_file(read)
    rules = tuple(_loaded(batch))
    for path, each in _guides(paths, content):
        outcome, proof = work(each, content, rules, found) if each else (unread(path, found), None)
        batch.outcomes.append(outcome)
        if keep and proof is not None:
            batch.proofs.append(proof)
        progress(1)
    told = {file for outcome in batch.outcomes for file in outcome.files}
    batch.other += [one for one in read if one.span.source.path not in told]
    if rest:
        _rest(content, rules, batch)
        _translations(content, batch)
    return batch


def _with_pictures(root: Path, content: Content) -> Content:
    """With the facts of pictures and films; what reads them is slow to load, so only where there are any."""
    if all(path.endswith(_TEXTS) for path in content.files):
        return content
    from guidebuild.build.pictures import with_pictures

    return with_pictures(root, content)


def _loaded(batch: Batch) -> Iterator[Entry]:
    """All rules that can be loaded; one that can't takes no other with it."""
    for name in rulebook.names_of_rules():
        try:
            yield rulebook.entry(name)
        except Exception as error:
            batch.faults.append(fault(error, name))


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


def _guides(paths: Sequence[str], content: Content) -> Iterator[tuple[str, GuideRead | None]]:
    """Each path with its guide, None where the reader could make none of it."""
    guides = {each.guide.path: each for each in content.guides}
    return ((path, guides.get(path)) for path in paths)


def _by_file(read: Sequence[Finding]) -> dict[str, list[Finding]]:
    found: dict[str, list[Finding]] = {}
    for one in read:
        found.setdefault(one.span.source.path, []).append(one)
    return found


def _rest(content: Content, rules: Sequence[Entry], batch: Batch) -> None:
    """What all that is no guide says to the rules about all guides together."""
    for rule in rules:
        try:
            if rule.gather:
                batch.gathered.append((rule.name, rule.gather(replace(content, guides=()))))
        except Exception as error:
            batch.faults.append(fault(error, rule.name))


def _translations(content: Content, batch: Batch) -> None:
    """The rules about translations on all that is no guide."""
    if len(content.settings.languages) < 2:
        return
    from guidebuild.build.languages.rest import of_rest

    try:
        batch.other += of_rest(content)
    except Exception as error:
        batch.faults.append(fault(error))
