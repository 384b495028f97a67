"""Every rule says what its fixtures note, where they note it, in the configurations noted, and nothing else."""

import pytest

from tests.rules.fixture import Fixture, fixtures


def name(fixture: Fixture) -> str:
    return f"{fixture.rule}/{fixture.path.stem}"


@pytest.mark.parametrize("fixture", fixtures(), ids=name)
def test_a_rule_says_what_its_fixture_notes(fixture: Fixture) -> None:
    found, others = fixture.found()
    assert not [f"{one.span.line}: {one.rule}: {one.message}" for one in others]
    assert found == fixture.expected()


@pytest.mark.parametrize("fixture", fixtures(), ids=name)
def test_a_bad_guide_has_findings_and_a_good_one_none(fixture: Fixture) -> None:
    said = [note for notes in fixture.expected().values() for note in notes]
    assert bool(said) == fixture.is_bad
