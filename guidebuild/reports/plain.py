"""Sentences only, one a line: for screen readers and for logs. No drawing, no columns, no colour."""

from collections.abc import Iterator

from guidebuild.reports.parts import words
from guidebuild.reports.parts.look import Look
from guidebuild.reports.parts.quote import parts, visible
from guidebuild.reports.parts.report import Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.span import Span


def render(report: Report, look: Look) -> str:
    """All findings, our own faults, and one line for the whole."""
    total = len(report.slips)
    told = [
        "\n".join(map(visible, _sentences(slip, f"{number} of {total}", report))) + "\n"
        for number, slip in enumerate(report.slips, start=1)
    ]
    faults = [words.fault(fault) + "\n" for fault in report.faults]
    return "\n".join([*told, *faults, words.summary(report)]) + "\n"


def _sentences(slip: Slip, number: str, report: Report) -> Iterator[str]:
    """One finding, a sentence a line."""
    finding = slip.finding
    yield f"Finding {number}, {slip.loudness.value}, rule {finding.rule}."
    yield f"Place: {words.places(slip, report)}, column {finding.span.column}."
    if slip.step_title:
        yield f"Step: {words.sentence(slip.step_title)}"
    yield from _quoted(finding.span)
    yield f"Wrong: {words.sentence(finding.message)}"
    if units := words.units(finding.told):
        yield f"Units: {words.sentence(units)}"
    for related in finding.related:
        span = related.span
        yield f"See: {report.path(span.source.path)}, line {span.line}: {related.words}."
    if finding.help:
        yield f"Do: {words.sentence(finding.help)}"


def _quoted(span: Span) -> Iterator[str]:
    """The author's line, then the part that is meant where that is not the whole of it."""
    before, inside, after = parts(span)
    if line := (before + inside + after).strip():
        yield f"Line: {line}"
    if inside.strip() and inside.strip() != line:
        yield f"Meant: {inside.strip()}"
