"""SARIF 2.1.0, the OASIS standard for results of static analysis: code hosts show it beside the lines.

Source: OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0, 27 March 2020.
"""

from hashlib import sha256
from json import dumps
from typing import Any
from urllib.parse import quote

from guidebuild.reports.parts import words
from guidebuild.reports.parts.identity import identities
from guidebuild.reports.parts.look import Look
from guidebuild.reports.parts.places import place
from guidebuild.reports.parts.report import Card, Fault, Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Category, Related
from guidebuild.source.span import Span

SCHEMA = (
    "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
)
CERTAIN = {Category.SAFETY, Category.CORRECTNESS}


def render(report: Report, look: Look) -> str:
    """One run, its rules, and a result for each finding."""
    names = sorted(report.cards)
    index = {name: number for number, name in enumerate(names)}
    run: dict[str, Any] = {
        "tool": {
            "driver": {
                "name": "guidebuild",
                "version": report.version,
                "rules": [_rule(report.cards[name]) for name in names],
            }
        },
        "columnKind": "unicodeCodePoints",
        "invocations": [
            {
                "executionSuccessful": not report.faults,
                "toolExecutionNotifications": [_fault(fault) for fault in report.faults],
            }
        ],
        "results": [_result(slip, index, report) for slip in report.slips],
    }
    log = {"$schema": SCHEMA, "version": "2.1.0", "runs": [run]}
    return dumps(log, indent=1, ensure_ascii=False) + "\n"


def _rule(card: Card) -> dict[str, Any]:
    level = "error" if card.category in CERTAIN else "warning"
    return {
        "id": card.name,
        "shortDescription": {"text": card.summary},
        "fullDescription": {
            "text": "\n\n".join(filter(None, (card.why, card.source))) or card.summary
        },
        "help": {"text": card.help or card.summary},
        "defaultConfiguration": {"level": level},
        "properties": {"tags": [card.category.value]},
    }


def _result(slip: Slip, index: dict[str, int], report: Report) -> dict[str, Any]:
    finding = slip.finding
    units = words.units(finding.told)
    text = " ".join(
        filter(None, (words.sentence(finding.message), units and words.sentence(units)))
    )
    result: dict[str, Any] = {
        "ruleId": finding.rule,
        "level": slip.loudness.value,
        "message": {"text": text},
        "locations": [_location(finding.span, report, slip)],
        "partialFingerprints": {"guidebuild/v1": _fingerprint(slip)},
    }
    if finding.rule in index:
        result["ruleIndex"] = index[finding.rule]
    if finding.related:
        result["relatedLocations"] = [_related(each, report) for each in finding.related]
    if finding.edits:
        result["fixes"] = [_fix(finding.help, finding.edits, report)]
    return result


def _location(span: Span, report: Report, slip: Slip | None = None) -> dict[str, Any]:
    physical = {"artifactLocation": {"uri": _uri(span, report)}, "region": _region(span)}
    location: dict[str, Any] = {"physicalLocation": physical}
    if slip and slip.step:
        name = {"name": slip.step_title, "fullyQualifiedName": slip.step}
        location["logicalLocations"] = [name]
    return location


def _region(span: Span) -> dict[str, int]:
    at = place(span)
    return {
        "startLine": at.line,
        "startColumn": at.column,
        "endLine": at.end_line,
        "endColumn": at.end_column,
        "charOffset": span.start,
        "charLength": span.end - span.start,
    }


def _uri(span: Span, report: Report) -> str:
    return quote(report.path(span.source.path), safe="/")


def _related(related: Related, report: Report) -> dict[str, Any]:
    return {**_location(related.span, report), "message": {"text": words.sentence(related.words)}}


def _fix(description: str, edits: tuple[Edit, ...], report: Report) -> dict[str, Any]:
    """One fix; the edits of one file stand together."""
    files: dict[str, list[Edit]] = {}
    for edit in edits:
        files.setdefault(_uri(edit.span, report), []).append(edit)
    changes = [
        {
            "artifactLocation": {"uri": uri},
            "replacements": [
                {"deletedRegion": _region(edit.span), "insertedContent": {"text": edit.text}}
                for edit in together
            ],
        }
        for uri, together in files.items()
    ]
    return {"description": {"text": words.sentence(description)}, "artifactChanges": changes}


def _fingerprint(slip: Slip) -> str:
    identity = next(identities(slip))
    return sha256("\0".join(identity).encode("utf-8", "replace")).hexdigest()


def _fault(fault: Fault) -> dict[str, Any]:
    return {"level": "error", "message": {"text": words.fault(fault)}}
