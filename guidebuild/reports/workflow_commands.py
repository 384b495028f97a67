"""Workflow commands: lines on standard output that the build server of a large code host turns into notes.

`::error file=...,line=...,endLine=...,col=...,endColumn=...,title=...::message`, with `%`, line ends, and in
properties `:` and `,` escaped as its documentation says. Columns are told only within one line.
"""

from guidebuild.reports.parts import words
from guidebuild.reports.parts.look import Look
from guidebuild.reports.parts.places import place
from guidebuild.reports.parts.quote import visible
from guidebuild.reports.parts.report import Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Loudness

COMMAND = {Loudness.ERROR: "error", Loudness.WARNING: "warning", Loudness.NOTE: "notice"}


def render(report: Report, look: Look) -> str:
    """A line for each finding and each fault of ours."""
    faults = [f"::error title=guidebuild::{_data(words.fault(fault))}" for fault in report.faults]
    return "".join(
        f"{line}\n" for line in (*(_line(slip, report) for slip in report.slips), *faults)
    )


def _line(slip: Slip, report: Report) -> str:
    finding, at = slip.finding, place(slip.finding.span)
    told = (finding.message, words.units(finding.told), finding.help)
    text = "\n".join(visible(words.sentence(part)) for part in told if part)
    properties = {"file": report.path(finding.span.source.path), "line": str(at.line)}
    properties |= {"endLine": str(at.end_line)}
    if at.line == at.end_line:
        properties |= {"col": str(at.column), "endColumn": str(at.end_column)}
    properties |= {"title": finding.rule}
    written = ",".join(f"{name}={_property(value)}" for name, value in properties.items())
    return f"::{COMMAND[slip.loudness]} {written}::{_data(text)}"


def _data(text: str) -> str:
    return text.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A")


def _property(text: str) -> str:
    return _data(text).replace(":", "%3A").replace(",", "%2C")
