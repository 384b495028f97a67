"""Every report says of the sample what its file in `golden/` says."""

import pytest

from guidebuild.cli.reporting import names
from guidebuild.reports.parts.look import Look
from guidebuild.reports.parts.report import Report
from tests.reports.golden import FOLDER, cases, rendered


@pytest.mark.parametrize(
    ("file", "name", "report", "look"), list(cases()), ids=lambda each: str(each)[:24]
)
def test_the_report_is_the_one_on_file(file: str, name: str, report: Report, look: Look) -> None:
    assert rendered(name, report, look) == (FOLDER / file).read_text(encoding="utf-8")


def test_every_report_has_a_file() -> None:
    assert {name.replace("_", "-") for _, name, _, _ in cases()} == set(names())
