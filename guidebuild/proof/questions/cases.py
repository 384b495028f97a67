"""Which of several values of a record's key holds where: the first whose condition holds."""

from collections.abc import Iterator, Sequence
from typing import TypeVar

from guidebuild.device.things import Case
from guidebuild.proof.proof import Proof

T = TypeVar("T")


def values(proof: Proof, cases: Sequence[Case[T]], where: int) -> Iterator[tuple[T, int]]:
    """Each value with the configurations of `where` in which it is the one."""
    if len(cases) == 1 and cases[0].when is None:
        if where:
            yield cases[0].value, where
        return
    for case in cases:
        here = where & proof.configurations.bits(case.when)
        if here:
            yield case.value, here
        where ^= here
