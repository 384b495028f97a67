"""Every rule that is listed is there, documented, and has at least one bad and one good fixture."""

import pytest

from guidebuild.build import rulebook
from tests.rules.fixture import HERE, fixtures
from tests.rules.listed import listed

# What these are about can't stand in a small text file; `tests/hard` has them.
READ_FROM_BYTES = {"not-utf-8", "file-too-large"}
# Told of a file that a translator sent back, which is no part of any content; `tests/translate` has it.
SENT_BACK = {"caption-timing-changed"}
FOLDERS = sorted({fixture.rule for fixture in fixtures()})


@pytest.mark.parametrize("name", listed())
def test_a_listed_rule_is_there(name: str) -> None:
    assert name in rulebook.names()


@pytest.mark.parametrize("name", rulebook.names())
def test_a_rule_says_what_why_and_from_where(name: str) -> None:
    card = rulebook.card(name)
    assert card.summary.endswith(".")
    assert "\n" not in card.summary
    assert card.why
    assert card.source.startswith("Source: ")
    assert card.message[-1] not in ".!"
    assert card.help


@pytest.mark.parametrize("name", sorted(set(rulebook.names()) - READ_FROM_BYTES - SENT_BACK))
def test_a_rule_has_a_bad_and_a_good_fixture(name: str) -> None:
    kinds = {path.stem.partition("-")[0] for path in (HERE / name).glob("*.md")}
    assert {"bad", "good"} <= kinds


@pytest.mark.parametrize("folder", FOLDERS)
def test_a_folder_is_named_as_a_rule(folder: str) -> None:
    assert folder in rulebook.names()
