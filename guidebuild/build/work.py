"""One guide proved and all rules run on it: the unit of work that is shared out and may be kept."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

from guidebuild.build.fault import fault
from guidebuild.build.locate import Steps
from guidebuild.build.outcome import Outcome
from guidebuild.build.rulebook import Entry
from guidebuild.build.tell import finding
from guidebuild.device.record import Device
from guidebuild.guide.content import Content, GuideRead
from guidebuild.guide.guide import Guide
from guidebuild.proof.proof import Proof
from guidebuild.proof.prove import prove
from guidebuild.reports.parts.report import Fault
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Finding, Loudness


@dataclass(slots=True)
class _Bench:
    """What was found and what fell over while one guide is worked on."""

    guide: Guide
    slips: list[Slip] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)

    def slip(self, found: Finding, steps: Steps) -> None:
        """Keep a finding with the step that it stands in."""
        stand = steps.at(found.span)
        named = (stand.stage, stand.step, stand.title) if stand else ("", "", "")
        self.slips.append(Slip(found, Loudness.ERROR, (self.guide.path,), *named))


def work(
    each: GuideRead, content: Content, rules: Iterable[Entry], read: Iterable[Finding] = ()
) -> tuple[Outcome, Proof | None]:
    """The guide's outcome, with what the reader found in it (`read`); no proof of a guide that could not be
    read as a whole, nor where proving fell over.
    """
    guide = each.guide
    bench = _Bench(guide)
    steps = Steps(guide)
    for found in read:
        bench.slip(found, steps)
    proof = _prove(bench, each.device) if each.whole else None
    if proof is not None:
        for rule in rules:
            _run(rule, proof, content, bench, steps)
    return _outcome(bench, proof), proof


def _prove(bench: _Bench, device: Device) -> Proof | None:
    try:
        return prove(bench.guide, device)
    except Exception as error:
        bench.faults.append(fault(error, path=bench.guide.path))
        return None


def _run(rule: Entry, proof: Proof, content: Content, bench: _Bench, steps: Steps) -> None:
    """One rule on one guide; a rule that falls over takes no other with it."""
    try:
        for found in _found(rule, proof, content):
            bench.slip(found, steps)
    except Exception as error:
        bench.faults.append(fault(error, rule.name, bench.guide.path))


def _found(rule: Entry, proof: Proof, content: Content) -> Iterator[Finding]:
    for hit in rule.hits(proof, content):
        if hit.where != 0:
            yield finding(rule, hit, proof.configurations)


def _outcome(bench: _Bench, proof: Proof | None) -> Outcome:
    guide = bench.guide
    return Outcome(
        path=guide.path,
        status=guide.status.text if guide.status else "",
        whole=guide.span.sort_key,
        allows=guide.allows,
        configurations=proof.configurations.total if proof else 0,
        slips=tuple(bench.slips),
        faults=tuple(bench.faults),
    )
