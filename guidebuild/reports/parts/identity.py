"""By what a finding is known again in a later run: never by its line number."""

from collections.abc import Iterator
from typing import TypeAlias

from guidebuild.reports.parts.places import short_text
from guidebuild.reports.parts.slip import Slip

Identity: TypeAlias = tuple[
    str, str, str, str
]  # rule, guide (or the file), step id, text of the span


def identities(slip: Slip) -> Iterator[Identity]:
    """One for each guide that it was found in; the file's path where it belongs to no guide."""
    finding = slip.finding
    for guide in slip.guides or (finding.span.source.path,):
        yield finding.rule, guide, slip.step, short_text(finding.span)
