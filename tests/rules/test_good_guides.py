"""No false alarm: a good guide of one rule draws nothing from any rule that may speak only when it is certain.

Every good fixture that shows a whole procedure counts, also those of rules that may be wrong. `before-not-said` is
left out, as fixtures keep their front matter short.
"""

import pytest

from guidebuild.build import rulebook
from guidebuild.source.finding import Category
from tests.rules.fixture import Fixture, findings_of, fixtures
from tests.rules.listed import listed

CERTAIN = {Category.SAFETY, Category.CORRECTNESS}
NOT_SAID_IN_FIXTURES = {"before-not-said"}
AT_LEAST = 70

OF_PROCEDURES = listed("Completeness", "Order and reach", "Tests", "Safety")
WHOLE = [one for one in fixtures() if not one.is_bad and one.rule in OF_PROCEDURES]


@pytest.mark.parametrize("fixture", WHOLE, ids=lambda one: f"{one.rule}/{one.path.stem}")
def test_a_good_guide_draws_no_certain_finding(fixture: Fixture) -> None:
    content = fixture.content()
    said = [
        f"{one.span.line}: {one.rule}: {one.message}"
        for name in rulebook.names()
        if rulebook.entry(name).category in CERTAIN and name not in NOT_SAID_IN_FIXTURES
        for one in findings_of(name, content)
    ]
    assert not said


def test_there_are_enough_of_them() -> None:
    assert len(WHOLE) >= AT_LEAST
