"""The pass over all configurations and the plain simulator of one agree in everything.

Not only in what they find and blame: also in what may be true of each thing before and after every step.
"""

import pytest
from hypothesis import HealthCheck, given, seed, settings

from tests.proof.fuzz.case import case
from tests.proof.fuzz.compare import disagreements
from tests.proof.fuzz.dice import Dice, dice
from tests.proof.fuzz.showing import show

BATCHES = 6  # so that both cores of a machine have something to do
A_BATCH = 500


@pytest.mark.parametrize("batch", range(BATCHES))
def test_prove_and_the_oracle_agree(batch: int) -> None:
    @seed(batch)  # the same cases on every machine; `python -m tests.proof.fuzz` goes further
    @settings(
        max_examples=A_BATCH,
        deadline=None,
        database=None,
        suppress_health_check=list(HealthCheck),
    )
    @given(dice())
    def agree(throws: Dice) -> None:
        one = case(throws)
        words = list(disagreements(one))
        assert not words, "\n".join([*words, show(one)])

    agree()
