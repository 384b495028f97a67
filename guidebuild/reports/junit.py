"""JUnit XML: a suite for each file, a case for each guide that is in order and for each finding.

Shown by build servers beside the results of tests. There is no standard of it; the shape is that of the XSD
that most servers publish (suite, case, failure; a note counts as passed and is told in `system-out`).
"""

from collections.abc import Iterable
from itertools import groupby
from xml.etree.ElementTree import Element, SubElement, indent, tostring

from guidebuild.reports.parts import words
from guidebuild.reports.parts.look import Look
from guidebuild.reports.parts.quote import visible
from guidebuild.reports.parts.report import Fault, Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Loudness


def render(report: Report, look: Look) -> str:
    """The suites in order of their files; guides without a finding count as passed."""
    suites = Element("testsuites", name="guidebuild")
    found = {
        path: list(slips)
        for path, slips in groupby(report.slips, key=lambda slip: slip.finding.span.source.path)
    }
    for path in sorted({*found, *report.guides, *report.unproved}):
        proved = path not in report.unproved
        _suite(suites, path, found.get(path, []), report, proved)
    if report.faults:
        _faults(suites, report.faults)
    indent(suites, " ")
    return f'<?xml version="1.0" encoding="UTF-8"?>\n{tostring(suites, encoding="unicode")}\n'


def _suite(suites: Element, path: str, slips: list[Slip], report: Report, proved: bool) -> None:
    """A guide that could not be proved and has no finding of its own (its record has) is skipped, not passed."""
    name = report.path(path)
    loud = sum(slip.loudness is not Loudness.NOTE for slip in slips)
    skipped = 0 if slips or proved else 1
    suite = _open(suites, name, len(slips) or 1, failures=loud, skipped=skipped)
    for slip in slips:
        _case(suite, name, slip, report)
    if not slips:
        case = SubElement(suite, "testcase", classname=visible(name), name="proof", time="0")
        if skipped:
            SubElement(case, "skipped", message="not readable as a whole, so not proved")


def _open(
    suites: Element, name: str, tests: int, failures: int = 0, errors: int = 0, skipped: int = 0
) -> Element:
    """A suite with its counts; times are not told, so that the same content gives the same bytes."""
    counts = {"tests": tests, "failures": failures, "errors": errors, "skipped": skipped}
    suite = SubElement(suites, "testsuite", name=visible(name), time="0")
    for key, value in counts.items():
        suite.set(key, str(value))
    return suite


def _case(suite: Element, path: str, slip: Slip, report: Report) -> None:
    finding = slip.finding
    name = f"{finding.rule}, line {finding.span.line}"
    case = SubElement(suite, "testcase", classname=visible(path), name=name, time="0")
    text = _text(slip, report)
    if slip.loudness is Loudness.NOTE:
        SubElement(case, "system-out").text = text
        return
    message = visible(words.sentence(finding.message))
    failure = SubElement(case, "failure", message=message, type=slip.loudness.value)
    failure.text = text


def _text(slip: Slip, report: Report) -> str:
    """All that the finding says, a line each."""
    finding = slip.finding
    related = (
        f"See: {report.path(each.span.source.path)}, line {each.span.line}: {each.words}"
        for each in finding.related
    )
    lines = (
        words.where(slip, report),
        words.sentence(finding.message),
        words.sentence(words.units(finding.told)),
        *related,
        f"Do: {words.sentence(finding.help)}" if finding.help else "",
    )
    return "\n".join(visible(line) for line in lines if line)


def _faults(suites: Element, faults: Iterable[Fault]) -> None:
    faults = list(faults)
    suite = _open(suites, "guidebuild", len(faults), errors=len(faults))
    for number, fault in enumerate(faults, start=1):
        name = f"{fault.rule or 'guidebuild'}, {number}"
        case = SubElement(suite, "testcase", classname="guidebuild", name=name, time="0")
        SubElement(case, "error", message=visible(fault.what), type="fault").text = words.fault(
            fault
        )
