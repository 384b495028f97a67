"""The tool's own words in each language: nothing missing, no placeholder lost, every plural form there."""

from string import Formatter

import pytest

from guidebuild.translate.cldr.plural import categories
from guidebuild.translate.messages.catalogue import FIRST, Message, catalogue, languages
from guidebuild.translate.messages.sayer import Sayer
from guidebuild.translate.signal_words import LEVELS, signal_words

OTHERS = languages()[1:]
# Keys that English got and the others do not say yet: the page says them in English.
NOT_YET: frozenset[str] = frozenset()
# A form for one, two or none may say the number in words.
MAY_SPELL_OUT = frozenset({"zero", "one", "two"})


def placeholders(form: str) -> set[str]:
    return {name for _, name, _, _ in Formatter().parse(form) if name}


def all_placeholders(message: Message) -> set[str]:
    forms = [message] if isinstance(message, str) else message.values()
    return set().union(*map(placeholders, forms))


def test_the_languages_of_the_tool() -> None:
    assert set(OTHERS) >= {"de", "fr", "es", "ja", "ar"}


@pytest.mark.parametrize("language", OTHERS)
def test_each_message_is_said(language: str) -> None:
    assert set(catalogue(FIRST)) - NOT_YET == set(catalogue(language))


@pytest.mark.parametrize("language", OTHERS)
def test_placeholders_are_those_of_english(language: str) -> None:
    for key, message in catalogue(language).items():
        wanted = all_placeholders(catalogue(FIRST)[key])
        if isinstance(message, str):
            assert placeholders(message) == wanted, key
            continue
        for category, form in message.items():
            spare = {"count"} if category in MAY_SPELL_OUT else set()
            assert placeholders(form) <= wanted, (key, category)
            if category not in MAY_SPELL_OUT:
                assert wanted - placeholders(form) <= spare, (key, category)


@pytest.mark.parametrize("language", languages())
def test_plural_messages_have_all_forms_of_the_language(language: str) -> None:
    english = catalogue(FIRST)
    for key, message in catalogue(language).items():
        assert isinstance(message, str) == isinstance(english[key], str), key
        if not isinstance(message, str):
            assert set(categories(language)) <= set(message) <= {*categories(language), "zero"}, key


@pytest.mark.parametrize("language", languages())
def test_signal_words_are_those_of_the_table(language: str) -> None:
    say = Sayer(language)
    assert {level: say.plain(f"signal.{level}") for level in LEVELS} == signal_words(language)


@pytest.mark.parametrize("language", OTHERS)
def test_hardly_a_message_is_as_in_english(language: str) -> None:
    """`Status` is German too, and `{ask}` has no words: a twentieth of all at most."""
    own, english = catalogue(language), catalogue(FIRST)
    same = [key for key in own if own[key] == english[key]]
    assert len(same) < len(own) / 20, same


def test_orders_as_a_workshop_says_them() -> None:
    """Arabic counts: one and two in words, 3 to 10 with the plural, 11 to 99 with the accusative (CLDR)."""
    assert Sayer("de").plain("act.fastener.remove", count=4, size="M2,5×8") == (
        "4 Schrauben M2,5×8 herausdrehen"
    )
    arabic = Sayer("ar")
    said = [arabic.plain("act.fastener.tighten", count=n) for n in (1, 2, 4, 11, 100)]
    assert said == ["شُدّ برغيًا واحدًا", "شُدّ برغيين", "شُدّ 4 براغٍ", "شُدّ 11 برغيًا", "شُدّ 100 برغي"]
