"""Code-quality JSON: a list of issues that build servers with merge requests show beside the changed lines.

Each has `description`, `check_name`, `fingerprint`, `severity` and `location` (`path`, `lines.begin`), the part
of the Code Climate issue format that such servers read.
"""

from collections import Counter
from hashlib import sha256
from json import dumps
from typing import Any

from guidebuild.reports.parts import words
from guidebuild.reports.parts.identity import identities
from guidebuild.reports.parts.look import Look
from guidebuild.reports.parts.places import place
from guidebuild.reports.parts.report import Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Category, Loudness

SEVERITY = {Loudness.ERROR: "major", Loudness.WARNING: "minor", Loudness.NOTE: "info"}


def render(report: Report, look: Look) -> str:
    """One issue for each finding; a fingerprint stays when lines move, and no two are the same."""
    met: Counter[str] = Counter()
    issues = [_issue(slip, report, met) for slip in report.slips]
    return dumps(issues, indent=1, ensure_ascii=False) + "\n"


def _issue(slip: Slip, report: Report, met: Counter[str]) -> dict[str, Any]:
    finding, at = slip.finding, place(slip.finding.span)
    told = (finding.message, words.units(finding.told), finding.help)
    return {
        "description": " ".join(words.sentence(part) for part in told if part),
        "check_name": finding.rule,
        "fingerprint": _fingerprint(slip, met),
        "severity": _severity(slip),
        "location": {
            "path": report.path(finding.span.source.path),
            "lines": {"begin": at.line, "end": at.end_line},
        },
    }


def _severity(slip: Slip) -> str:
    hurts = slip.finding.category is Category.SAFETY and slip.loudness is Loudness.ERROR
    return "blocker" if hurts else SEVERITY[slip.loudness]


def _fingerprint(slip: Slip, met: Counter[str]) -> str:
    """By what it is known again, and its number among equals."""
    identity = "\0".join(next(identities(slip)))
    met[identity] += 1
    return sha256(f"{identity}\0{met[identity]}".encode("utf-8", "replace")).hexdigest()
