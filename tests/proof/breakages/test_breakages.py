"""Each of the listed breakages of the proof is noticed by the fuzz."""

import pytest

from tests.proof.breakages.breakage import Breakage
from tests.proof.breakages.listed import BREAKAGES
from tests.proof.breakages.noticing import noticed


def test_there_are_enough() -> None:
    assert len({(one.module, one.before, one.after) for one in BREAKAGES}) >= 30


def test_the_proof_as_it_is_is_not_noticed() -> None:
    as_it_is = Breakage("nothing", "proof.prove", "stepping = ", "stepping = ")
    assert noticed(as_it_is, range(100)) is None


@pytest.mark.parametrize("breakage", BREAKAGES, ids=lambda one: one.what.replace(" ", "-"))
def test_it_is_noticed(breakage: Breakage) -> None:
    assert noticed(breakage) is not None
