"""Exit codes: a promise to whoever calls us from a script."""

import sys
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from guidebuild.reports.parts.report import Report

CLEAN = 0
FINDINGS = 1
WRONG_USE = 2
FAULT = 3
STOPPED = 130  # by Ctrl-C: 128 and the signal's number, as shells have it


def of(report: "Report", trace: bool) -> int:
    """The code for a report; with `trace`, all that is known of our own faults goes to standard error."""
    if trace:
        for fault in report.faults:
            print(fault.trace, file=sys.stderr)
    return FAULT if report.faults else CLEAN if report.clean else FINDINGS
