"""What a rule offers to mend is mended: the finding is gone, and a second time there is nothing to do."""

import tempfile
from pathlib import Path

from guidebuild.build.check import check
from guidebuild.build.fix import fix, put
from guidebuild.build.result import CheckResult
from tests.rules.fixture import Fixture, fixtures

AT_LEAST = 9


def checked(root: Path) -> CheckResult:
    return check(root, jobs=1)


def offers(result: CheckResult, rule: str) -> int:
    return sum(1 for one in result.findings if one.rule == rule and one.edits)


def mended(fixture: Fixture) -> bool:
    """Whether the fixture's rule offers something; if so, it is done and looked at again."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        fixture.lay_out(folder)
        if not offers(checked(folder), fixture.rule):
            return False
        fixed = fix(folder, checked)
        put(folder, fixed)
        assert not offers(fixed.result, fixture.rule), fixture.path
        assert fix(folder, checked).mended == 0, fixture.path
        return True


def test_what_is_offered_is_mended() -> None:
    offering = {one.rule for one in fixtures() if one.is_bad and mended(one)}
    assert len(offering) >= AT_LEAST
    assert {"caution-missing", "caution-not-in-order"} <= offering
