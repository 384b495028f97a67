"""Everything about each finding, for other programs; its shape is schema/report.schema.json."""

from json import dumps
from typing import Any

from guidebuild.reports.parts.look import Look
from guidebuild.reports.parts.places import place, short_text
from guidebuild.reports.parts.report import Fault, Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Loudness, Told
from guidebuild.source.span import Span

FORMAT = 1  # raised when a reader of the old form would go wrong


def render(report: Report, look: Look) -> str:
    """The report as one JSON object; paths are those of the content folder, `root` leads there."""
    counts = report.counts
    whole = {
        "format": FORMAT,
        "guidebuild": report.version,
        "root": report.prefix,
        "guides": list(report.guides),
        "unproved": list(report.unproved),
        "configurations": report.configurations,
        "counts": {each.value: counts[each] for each in reversed(Loudness)},
        "known": report.known,
        "findings": [_finding(slip) for slip in report.slips],
        "faults": [_fault(fault) for fault in report.faults],
    }
    return dumps(whole, indent=1, ensure_ascii=False) + "\n"


def _finding(slip: Slip) -> dict[str, Any]:
    finding = slip.finding
    return {
        "rule": finding.rule,
        "category": finding.category.value,
        "loudness": slip.loudness.value,
        **_place(finding.span),
        "guides": list(slip.guides),
        "stage": slip.stage,
        "step": slip.step,
        "step-title": slip.step_title,
        "message": finding.message,
        "help": finding.help,
        "related": [{**_place(each.span), "words": each.words} for each in finding.related],
        "units": _told(finding.told),
        "edits": [_edit(edit) for edit in finding.edits],
    }


def _place(span: Span) -> dict[str, Any]:
    at = place(span)
    return {
        "path": span.source.path,
        "start": [at.line, at.column],
        "end": [at.end_line, at.end_column],
        "offsets": [span.start, span.end],
        "text": short_text(span),
    }


def _told(told: Told | None) -> dict[str, Any] | None:
    if told is None:
        return None
    full = [{option: list(values) for option, values in row} for row in told.full]
    return {"words": told.words, "count": told.count, "total": told.total, "full": full}


def _edit(edit: Edit) -> dict[str, Any]:
    return {
        "path": edit.span.source.path,
        "offsets": [edit.span.start, edit.span.end],
        "text": edit.text,
    }


def _fault(fault: Fault) -> dict[str, str]:
    return {"rule": fault.rule, "path": fault.path, "what": fault.what}
