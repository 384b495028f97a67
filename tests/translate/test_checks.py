"""What comes back from a translator, checked: numbers by value, codes, signal words, what went out of date.

Source of the number forms: Unicode CLDR, by babel, in `test_cldr.py`; the pairs here are worked from it.
"""

import importlib

import pytest

from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.catalogue.change import Class, compared
from guidebuild.translate.catalogue.pair import Pair
from guidebuild.translate.po.entry import Entry, Previous
from guidebuild.translate.segments.codes import Code
from guidebuild.translate.segments.segment import Segment
from guidebuild.translate.signal_words import LEVELS, confirmed, languages, signal_words

NOWHERE = Span(Source("guide.md", ""), 0, 0)
BOLD = (Code(frozenset({"strong"}), None),)


def slips(check: str, source: str, text: str, language: str = "de", **entry: object) -> list[str]:
    """The messages of one check about one pair."""
    module = importlib.import_module(f"guidebuild.translate.checks.{check}")
    segment = Segment(
        "guide.md", "plate", "text", source, NOWHERE, codes=BOLD if "<1>" in source else ()
    )
    pair = Pair(segment, Entry(source, (text,), **entry), "en", language)  # type: ignore[arg-type]
    return [module.MESSAGE.format(**slip.words) for slip in module.check_pair(pair)]


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("de", "Um 1,3 mm heben."),
        ("de", "Um 1.3 mm heben."),
        ("fr", "Lever de 1,3\u202fmm."),
        ("ja", "1.3 mm 持ち上げます。"),
        ("ar", "ارفع ١٫٣ مم."),
    ],
)
def test_the_same_number_in_the_languages_own_form_is_right(language: str, text: str) -> None:
    assert slips("number_changed", "Lift it by 1.3 mm.", text, language) == []


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("de", "Um 13 mm heben."),
        ("de", "Um 1,03 mm heben."),
        ("fr", "Lever de 13\u202fmm."),
        ("ja", "13 mm 持ち上げます。"),
        ("ar", "ارفع ١٣ مم."),
        ("de", "Anheben."),
    ],
)
def test_another_number_is_refused(language: str, text: str) -> None:
    assert len(slips("number_changed", "Lift it by 1.3 mm.", text, language)) == 1


def test_small_whole_numbers_may_be_spelt_out_and_large_ones_may_be_grouped() -> None:
    assert slips("number_changed", "Turn it 2 times.", "Zweimal drehen.") == []
    assert slips("number_changed", "Use 1,200 V.", "1.200 V anlegen.") == []
    assert slips("number_changed", "Take 15 to 25 g.", "15 bis 20 g nehmen.") == [
        "`20` stands where the source has `25`"
    ]


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("Die <1>Platte</1> heben.", None),
        ("Die Platte heben.", "the translation has lost <1> </1>"),
        ("Die <1>Platte heben.", "the translation has lost </1>"),
        ("Die </1>Platte<1> heben.", "the translation has its codes nested crosswise"),
        ("<2>Die</2> <1>Platte</1>", "the translation has <2> </2>, which the source has not"),
    ],
)
def test_codes_come_back_whole(text: str, message: str | None) -> None:
    assert slips("placeholder_lost", "Lift the <1>plate</1>.", text) == (
        [message] if message else []
    )


def test_a_signal_word_typed_by_hand_is_found() -> None:
    assert slips(
        "signal_word_translated_by_hand", "The cell can burn.", "WARNUNG: Die Zelle kann brennen."
    )
    assert not slips("signal_word_translated_by_hand", "Mind the notch.", "Vorsichtig heben.")


def test_an_outdated_translation_says_what_changed() -> None:
    found = slips(
        "translation_outdated",
        "Tighten it to 1.3 N·m.",
        "Mit 1,2 N·m festziehen.",
        flags=("fuzzy",),
        previous=Previous(source="Tighten it to 1.2 N·m."),
    )
    assert found == ["this translation is out of date: number 1.2 → 1.3"]


@pytest.mark.parametrize(
    ("old", "new", "classes"),
    [
        ("Lift the plate.", "Lift the plate", {Class.COSMETIC}),
        ("Lift the plate.", "lift  the Plate!", {Class.COSMETIC}),
        ("Lift the plate.", "Lift the cover.", {Class.WORDING}),
        ("Lift it 3 mm.", "Lift it 4 mm.", {Class.NUMBER}),
        ("Lift it 3 mm.", "Lift it 3 cm.", {Class.UNIT}),
        ("Do this with power off.", "Do not do this with power off.", {Class.NEGATION}),
        ("Lift the plate.", "Lift the <1>plate</1>.", {Class.CODES}),
        ("Lift it 3 mm.", "Raise it 4 mm.", {Class.NUMBER, Class.WORDING}),
    ],
)
def test_a_change_is_classed_as_what_it_is(old: str, new: str, classes: set[Class]) -> None:
    change = compared(old, new, "en")
    assert change is not None
    assert change.classes == classes


def test_a_changed_level_is_a_change_of_signal_word_alone() -> None:
    change = compared("It burns.", "It burns.", "en", ("caution", "warning"))
    assert change is not None
    assert change.classes == {Class.SIGNAL_WORD}
    assert change.grave


@pytest.mark.parametrize("language", languages())
def test_the_four_signal_words_are_four_words_in_every_language(language: str) -> None:
    words = signal_words(language)
    assert len({words[level].casefold() for level in LEVELS}) == 4
    assert confirmed(language) == (language == "en")


@pytest.mark.parametrize(
    ("language", "text", "lost"),
    [
        ("de", "Die Bolzen nicht berühren.", False),
        ("de", "Die Bolzen und die Platine berühren.", True),
        ("de", "Das Berühren der Bolzen vermeiden.", False),
        ("fr", "N’approchez pas la main des goujons.", False),
        ("fr", "Toucher les goujons.", True),
        ("fr", "Il n'est permis à personne d'y toucher.", False),
        ("it", "Toccare i perni con un'altra chiave.", True),
        ("es", "Evite tocar los espárragos.", False),
        ("es", "Tocar los espárragos.", True),
        ("ja", "ボルトに触れないでください。", False),
        ("ja", "ボルトに触れてください。", True),
        ("ar", "لا تلمس المسامير.", False),
        ("ar", "المس المسامير.", True),
        ("sv", "Rör bultarna.", False),  # no list: silent
    ],
)
def test_a_lost_negation_is_found_in_each_language(language: str, text: str, lost: bool) -> None:
    assert bool(slips("negation_lost", "Do not touch the studs.", text, language)) == lost
