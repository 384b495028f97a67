"""Every tenth mutant of the demo guides; `python -m tests.mutation` takes all."""

from functools import cache

import pytest

from guidebuild.read.content import read_content
from tests.mutation.__main__ import CONTENT
from tests.mutation.judging import Bench
from tests.mutation.mutants import mutants
from tests.mutation.tally import Tally

EVERY = 10


@cache
def benches() -> list[Bench]:
    content, findings = read_content(CONTENT)
    assert not findings
    return [Bench(content, read) for read in content.guides]


@cache
def tally() -> Tally:
    found = Tally()
    for number, bench in enumerate(benches()):
        found.add(bench, list(mutants(bench.read.guide, bench.read.device))[number::EVERY])
    return found


@pytest.mark.parametrize("bench", benches(), ids=lambda one: one.read.guide.id)
def test_guides_as_written_have_no_fault(bench: Bench) -> None:
    assert not any(outcome.facts for outcome in bench.outcomes(bench.read.guide).values())
    assert not list(bench.told(bench.read.guide))


def test_every_mistake_is_told_in_every_configuration_that_has_it() -> None:
    assert tally().noticed
    assert not [(one.mutant.what, sorted(one.missed)) for one in tally().missed]
    assert not [(one.mutant.what, one.told) for one in tally().elsewhere]


def test_what_nobody_speaks_of_does_no_harm() -> None:
    assert any(tally().silent.values())
    assert not [one.mutant.what for one in tally().unexplained]


def test_a_mistake_is_told_about_once() -> None:
    assert tally().findings_a_mistake <= 1.4
