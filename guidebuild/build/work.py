"""One guide proved and all rules run on it: the unit of work that is shared out and may be kept."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from guidebuild.build.fault import fault
from guidebuild.build.locate import Steps
from guidebuild.build.outcome import Outcome
from guidebuild.build.rulebook import Entry, entry
from guidebuild.build.tell import finding
from guidebuild.device.record import Device
from guidebuild.guide.configurations import MOST, TooManyConfigurations
from guidebuild.guide.content import Content, GuideRead
from guidebuild.guide.guide import Guide
from guidebuild.proof.hit import Hit
from guidebuild.proof.proof import Proof
from guidebuild.proof.prove import prove
from guidebuild.reports.parts.report import Fault
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Finding, Loudness
from guidebuild.source.remembered import remembered


@dataclass(slots=True)
class _Bench:
    """What was found and what fell over while one guide is worked on."""

    guide: Guide
    slips: list[Slip] = field(default_factory=list)
    beside: list[Finding] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)

    def keep(self, found: Finding, steps: Steps) -> None:
        """What the reader found: in the guide and its stages, or beside it in a record or a kit."""
        if found.span.source.path.endswith(".md"):
            self.slip(found, steps)
        else:
            self.beside.append(found)

    def slip(self, found: Finding, steps: Steps) -> None:
        """Keep a finding with the step that it stands in."""
        stand = steps.at(found.span)
        named = (stand.stage, stand.step, stand.title) if stand else ("", "", "")
        self.slips.append(Slip(found, Loudness.ERROR, (self.guide.path,), *named))


def work(
    each: GuideRead, content: Content, rules: Sequence[Entry], read: Mapping[str, Sequence[Finding]]
) -> tuple[Outcome, Proof | None]:
    """The guide's outcome; `read`: what the reader found, by file.

    No proof is made of a guide that could not be read as a whole: it would speak of what was lost.
    """
    bench = _Bench(each.guide)
    steps = Steps(each.guide)
    for file in each.files:
        for found in read.get(file, ()):
            bench.keep(found, steps)
    # Rules see this guide and what holds for all, never another guide: so each can be worked on alone.
    alone = replace(content, guides=(each,), devices={}, kits={}, files=frozenset())
    proof = _prove(bench, each.device, steps) if each.whole else None
    if proof is not None:
        for rule in rules:
            _run(rule, proof, alone, bench, steps)
    _translations(each, content, bench, steps)
    gathered = tuple(_gathered(rules, alone, bench))
    return _outcome(each, bench, gathered, proof), proof


def unread(path: str, read: Mapping[str, Sequence[Finding]]) -> Outcome:
    """The outcome of a guide of which the reader could make nothing but findings."""
    slips = tuple(Slip(found, Loudness.ERROR, (path,)) for found in read.get(path, ()))
    return Outcome(path, "", (path, 0, 0), (), slips=slips, files=(path,), read=False)


def _prove(bench: _Bench, device: Device, steps: Steps) -> Proof | None:
    try:
        return prove(bench.guide, device)
    except TooManyConfigurations as many:
        words = {"count": many.count, "limit": MOST}
        hit = Hit(bench.guide.title.span, words)
        bench.slip(finding(entry("too-many-configurations"), hit), steps)
        return None
    except Exception as error:
        bench.faults.append(fault(error, path=bench.guide.path))
        return None


def _run(rule: Entry, proof: Proof, content: Content, bench: _Bench, steps: Steps) -> None:
    """One rule on one guide; a rule that falls over takes no other with it."""
    try:
        for hit in rule.hits(proof, content):
            if hit.where != 0:
                bench.slip(finding(rule, hit, proof.configurations), steps)
    except Exception as error:
        bench.faults.append(fault(error, rule.name, bench.guide.path))


def _translations(each: GuideRead, content: Content, bench: _Bench, steps: Steps) -> None:
    """The rules about translations and captions, loaded only where there are any: they read files."""
    films = each.guide.path.removesuffix(".md")
    if len(content.settings.languages) < 2 and films not in _folders(content.files):
        return
    from guidebuild.build.languages.guide import of_guide

    try:
        for found in of_guide(each, content):
            bench.slip(found, steps)
    except Exception as error:
        bench.faults.append(fault(error, path=each.guide.path))


@remembered
def _folders(files: frozenset[str]) -> frozenset[str]:
    """Every folder that has a file in it, however far down."""
    found: set[str] = set()
    for path in files:
        while (path := path.rpartition("/")[0]) and path not in found:
            found.add(path)
    return frozenset(found)


def _gathered(rules: Iterable[Entry], alone: Content, bench: _Bench) -> Iterator[tuple[str, Any]]:
    """What the rules about all guides want to know of this one."""
    for rule in rules:
        if rule.gather:
            try:
                yield rule.name, rule.gather(alone)
            except Exception as error:
                bench.faults.append(fault(error, rule.name, bench.guide.path))


def _outcome(
    each: GuideRead, bench: _Bench, gathered: tuple[tuple[str, Any], ...], proof: Proof | None
) -> Outcome:
    guide = each.guide
    return Outcome(
        path=guide.path,
        status=guide.status.text if guide.status else "",
        whole=guide.span.sort_key,
        allows=guide.allows,
        configurations=proof.configurations.total if proof else 0,
        slips=tuple(bench.slips),
        faults=tuple(bench.faults),
        beside=tuple(bench.beside),
        gathered=gathered,
        files=each.files,
    )
