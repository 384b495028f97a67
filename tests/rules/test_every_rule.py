"""Every rule of the package is documented and has at least one bad and one good fixture."""

import pytest

from guidebuild.build import rulebook
from tests.rules.fixture import HERE, fixtures

FOLDERS = sorted({fixture.rule for fixture in fixtures()})


@pytest.mark.parametrize("name", rulebook.names())
def test_a_rule_says_what_why_and_from_where(name: str) -> None:
    card = rulebook.card(name)
    assert card.summary.endswith(".")
    assert "\n" not in card.summary
    assert card.why
    assert card.source.startswith("Source: ")
    assert card.message[-1] not in ".!"
    assert card.help


@pytest.mark.parametrize("name", rulebook.names())
def test_a_rule_has_a_bad_and_a_good_fixture(name: str) -> None:
    kinds = {path.stem.partition("-")[0] for path in (HERE / name).glob("*.md")}
    assert {"bad", "good"} <= kinds


@pytest.mark.parametrize("folder", FOLDERS)
def test_a_folder_is_named_as_a_rule(folder: str) -> None:
    assert folder in rulebook.names()
