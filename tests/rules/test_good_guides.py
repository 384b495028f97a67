"""No false alarm: a good guide of one rule draws nothing from any rule that may speak only when it is certain.

Every good fixture that shows a whole procedure counts. Folders whose fixtures show a piece of one (an act or two,
for a rule about words or tools) are left out; so is `before-not-said`, as fixtures keep their front matter short.
"""

import tempfile
from pathlib import Path

import pytest

from guidebuild.build import rulebook
from guidebuild.guide.content import Content
from guidebuild.read.content import read_content
from guidebuild.source.finding import Category
from tests.rules.fixture import Fixture, findings_of, fixtures

CERTAIN = {Category.SAFETY, Category.CORRECTNESS}
NOT_SAID_IN_FIXTURES = {"before-not-said"}
AT_LEAST = 60


def _is_whole(fixture: Fixture) -> bool:
    return not fixture.is_bad and not _pieces(fixture) and fixture.rule in rulebook.names()


def _pieces(fixture: Fixture) -> bool:
    """A guide that says so itself, or one about words, pictures or what lies beside the acts."""
    return rulebook.entry(fixture.rule).category is Category.TEXT or fixture.rule in PIECES


PIECES = {
    "driver-ambiguous",
    "engagement-too-short",
    "kit-discontinued",
    "kit-never-used",
    "not-in-kit",
    "screw-too-long",
    "sequence-missing",
    "tool-never-used",
    "tool-not-listed",
    "torque-missing",
    "torque-too-high",
    "torque-unit-unknown",
    "wrong-driver",
}
WHOLE = [fixture for fixture in fixtures() if _is_whole(fixture)]


def _content(fixture: Fixture) -> Content:
    with tempfile.TemporaryDirectory() as folder:
        fixture.lay_out(Path(folder))
        return read_content(Path(folder))[0]


@pytest.mark.parametrize("fixture", WHOLE, ids=lambda one: f"{one.rule}/{one.path.stem}")
def test_a_good_guide_draws_no_certain_finding(fixture: Fixture) -> None:
    content = _content(fixture)
    said = [
        f"{one.span.line}: {one.rule}: {one.message}"
        for name in rulebook.names()
        if rulebook.entry(name).category in CERTAIN and name not in NOT_SAID_IN_FIXTURES
        for one in findings_of(name, content)
    ]
    assert not said


def test_there_are_enough_of_them() -> None:
    assert len(WHOLE) >= AT_LEAST
