"""Sentences and words by the public counting rules.

Source: rules 8.4 to 8.7 of public digests of simplified technical English (restated), with the three worked
counts; the other counts follow from the rules.
"""

import pytest

from guidebuild.guide.language.commands import command
from guidebuild.guide.language.lists import lists
from guidebuild.guide.language.sentences import sentences
from guidebuild.guide.language.words import count_words

ENGLISH = lists("en")
assert ENGLISH is not None


@pytest.mark.parametrize(
    ("sentence", "words"),
    [
        ("Remove the 2 screws (A).", 5),  # worked example
        ("Lift the cover 20 mm.", 4),  # worked example
        ("Disconnect connector J1.", 3),  # worked example
        ("Tighten to 0.30 N·m.", 3),
        ("Wait 5 to 10 min.", 2),
        ("Use the heat-conducting pad.", 4),
        ('The display shows "Head not found".', 4),
        ("Push it in (it clicks twice) and let go.", 7),
        ("", 0),
    ],
)
def test_words_are_counted_by_the_public_rules(sentence: str, words: int) -> None:
    assert count_words(sentence) == words


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("Lift it. Turn it.", ["Lift it.", "Turn it."]),
        ("Use approx. 3 mm of it. Wait.", ["Use approx. 3 mm of it.", "Wait."]),
        ("Set 1.5 V d.c. between them. Read it.", ["Set 1.5 V d.c. between them.", "Read it."]),
        ("See fig. 3! Now go on", ["See fig. 3!", "Now go on"]),
        ("カバーを外します。次に進みます。", ["カバーを外します。", "次に進みます。"]),
        ("  ", []),
    ],
)
def test_a_stop_ends_a_sentence_only_where_one_ends(text: str, parts: list[str]) -> None:
    assert [text[start:end] for start, end in sentences(text)] == parts


@pytest.mark.parametrize(
    ("sentence", "verb", "negative"),
    [
        ("Lift the cover.", "lift", False),
        ("If it sticks, turn the lever.", "turn", False),
        ("Do not touch the studs.", "touch", True),
        ("Then slowly pull.", "pull", False),
        ("The cover lifts by itself.", None, False),
        ("Screws 1 are longer.", None, False),
    ],
)
def test_a_command_is_told_from_a_description(
    sentence: str, verb: str | None, negative: bool
) -> None:
    found = command(sentence, ENGLISH)
    assert (found and found.verb) == verb
    assert found is None or found.negative == negative


def test_a_language_without_lists_has_none() -> None:
    assert lists("tlh") is None
    assert lists("en-GB") is ENGLISH or lists("en-GB") == ENGLISH
