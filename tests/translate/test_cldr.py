"""Numbers and plurals against CLDR as a reference library gives it.

Source: babel 2.18 (CLDR 47). Its `parse_decimal('1.3', locale='de')` gives 13 where it is not strict: the
trap that these tests are for.
"""

from decimal import Decimal

import pytest

from guidebuild.translate.cldr.locale import languages, locale
from guidebuild.translate.cldr.number import figures_in, readings, write_number
from guidebuild.translate.cldr.plural import categories, plural
from tests import needs

babel = needs.library("babel")
numbers = needs.library("babel.numbers")

WHOLE = (0, 1, 2, 3, 4, 5, 7, 10, 11, 12, 14, 19, 20, 21, 22, 25, 100, 101, 102, 111, 1000, 10**6)
BROKEN = ("0.0", "0.5", "1.0", "1.3", "1.5", "2.0", "10.0", "1.30", "21.1")
SAMPLES = [Decimal(value) for value in (*WHOLE, *BROKEN)]


@pytest.mark.parametrize("language", languages())
def test_a_number_takes_the_plural_form_of_cldr(language: str) -> None:
    form = babel.Locale.parse(language, sep="-").plural_form
    assert {str(one): plural(one, language) for one in SAMPLES} == {
        str(one): form(one) for one in SAMPLES
    }
    assert set(categories(language)) == set(form.tags) | {"other"}


@pytest.mark.parametrize("language", languages())
def test_separators_are_those_of_cldr(language: str) -> None:
    parsed = babel.Locale.parse(language, sep="-")
    for value in ("1234567.5", "0.30", "1.3"):
        pattern = "#,##0." + "0" * len(value.partition(".")[2])
        wanted = numbers.format_decimal(
            Decimal(value), format=pattern, locale=parsed, numbering_system="latn"
        )
        if language not in (
            "hi",
        ):  # Hindi groups by two from the thousands on: kept in threes here
            assert write_number(Decimal(value), language) == wanted


@pytest.mark.parametrize("language", languages())
def test_what_is_written_is_read_back_first(language: str) -> None:
    for value in ("1234.5", "1.3", "13", "0.30", "12345678"):
        assert readings(write_number(Decimal(value), language), language)[0] == Decimal(value)


@pytest.mark.parametrize(
    ("language", "written", "meant"),
    [
        ("de", "1,3 mm", "1.3"),
        ("de", "1.3 mm", "1.3"),  # left as the source wrote it: a matter of style, not a mistake
        ("fr", "1,3\u202fmm", "1.3"),
        ("fr", "1\u202f234,5 mm", "1234.5"),
        ("ja", "1.3 mm", "1.3"),
        ("ar", "١٫٣ مم", "1.3"),
        ("ar-EG", "١٬٢٣٤٫٥ مم", "1234.5"),
        ("de-CH", "1’234.5 mm", "1234.5"),
    ],
)
def test_the_same_value_in_another_writing_is_the_same(
    language: str, written: str, meant: str
) -> None:
    (figure,) = figures_in(written, language)
    assert Decimal(meant) in figure.values


@pytest.mark.parametrize(
    ("language", "written"),
    [
        ("de", "13 mm"),
        ("de", "1,30,0 mm"),
        ("fr", "13 mm"),
        ("ja", "13 mm"),
        ("ar", "١٣ مم"),
        ("de", "0,13 mm"),
    ],
)
def test_another_value_is_never_taken_for_it(language: str, written: str) -> None:
    assert all(Decimal("1.3") not in figure.values for figure in figures_in(written, language))


def test_a_language_that_is_not_there_takes_its_shorter_form() -> None:
    assert locale("de-LU").language == "de"
    assert locale("zh-Hans-SG").language == "zh-Hans"
    assert locale("xx").language == "en"
