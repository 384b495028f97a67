"""The address of a step: its check character by ISO 7064 MOD 37,36."""

from itertools import pairwise

import pytest

from guidebuild.outputs.html.page.code import check_character, checks, step_code
from tests import needs


def test_example_of_a_standard_that_uses_it() -> None:
    """Source: the Global Release Identifier's published example A1-2425G-ABC1234002-M (IFPI GRid standard)."""
    assert check_character("A12425GABC1234002") == "M"


@pytest.mark.parametrize("said", ["LP2-03/2/14", "BE4-02/4/R1", "X", "0", "ZZZZ-99/12/40"])
def test_as_a_reference_library_has_it(said: str) -> None:
    """Source: python-stdnum, iso7064.mod_37_36."""
    reference = needs.library("stdnum.iso7064.mod_37_36")
    plain = "".join(sign for sign in said if sign.isalnum())
    assert check_character(said) == reference.calc_check_digit(plain)


def test_one_wrong_sign_is_found() -> None:
    code = step_code("LP2-03", "2", "14")
    for at, sign in enumerate(code[:-2]):
        if sign.isalnum():
            for other in "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ":
                assert checks(code[:at] + other + code[at + 1 :]) is (other == sign)


def test_two_signs_swapped_are_found() -> None:
    said = "LP2031440"
    for at, (first, second) in enumerate(pairwise(said)):
        swapped = said[:at] + second + first + said[at + 2 :]
        assert (check_character(swapped) == check_character(said)) is (first == second)
