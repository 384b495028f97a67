"""Signal words against the definitions of two published conventions, as restated in public.

ANSI Z535.4-2007, 4.14.1 to 4.14.4: restated by a vendor of labels, which quotes the clauses. Z535.6 on notice: OASIS
DITA 2.0, `hazardstatement`. The other convention: US Army TC 1-213, chapter 1 (read), and the simplified English
of section 7, "A warning means risk of injury or death. A caution means risk of damage to objects" (public notes).
"""

import pytest

from guidebuild.guide.signal_words import (
    TWO_LEVELS,
    gravity,
    speaks_of_damage,
    speaks_of_injury,
    words_for_damage,
    words_for_injury,
)

ANSI = {
    "danger": "a hazardous situation which, if not avoided, will result in death or serious injury",
    "warning": "a hazardous situation which, if not avoided, could result in death or serious injury",
    "caution": "a hazardous situation which, if not avoided, could result in minor or moderate injury",
}
NOTICE = "information considered important but not hazard-related, such as property damage"
OTHER = {
    "warning": "risk of injury or death",
    "caution": "risk of damage to objects",
}


@pytest.mark.parametrize("word", ANSI)
def test_a_definition_of_injury_is_known_and_its_word_allowed(word: str) -> None:
    assert speaks_of_injury(ANSI[word])
    assert word in words_for_injury("ansi-z535")
    assert word not in words_for_damage("ansi-z535")


def test_notice_is_for_damage_only() -> None:
    assert speaks_of_damage(NOTICE)
    assert not speaks_of_injury(NOTICE)
    assert words_for_damage("ansi-z535") == ("notice",)


def test_the_graver_word_comes_first() -> None:
    assert [gravity(word) for word in (*ANSI, "notice")] == [0, 1, 2, 3]


def test_with_two_levels_a_warning_is_any_injury_and_a_caution_is_damage() -> None:
    assert speaks_of_injury(OTHER["warning"])
    assert "warning" in words_for_injury(TWO_LEVELS)
    assert "caution" not in words_for_injury(TWO_LEVELS)
    assert speaks_of_damage(OTHER["caution"])
    assert not speaks_of_injury(OTHER["caution"])
    assert words_for_damage(TWO_LEVELS)[0] == "caution"


@pytest.mark.parametrize(
    "text",
    [
        "The edge is sharp and can cut your fingers.",  # sharp element, ISO 7010 W022
        "A lithium cell can catch fire. Toxic smoke can cause serious injury.",
        "An electric shock can kill.",
    ],
)
def test_outcomes_to_people_are_heard(text: str) -> None:
    assert speaks_of_injury(text)


@pytest.mark.parametrize(
    "text",
    [
        "A long screw in the near hole breaks the board.",
        "A discharge can cause damage to the board.",
        "The flex tears when the cover is pulled away.",
    ],
)
def test_outcomes_to_things_are_no_injury(text: str) -> None:
    assert speaks_of_damage(text)
    assert not speaks_of_injury(text)
