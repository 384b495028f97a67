"""Sixty and more broken files: each mistake told once, at its place, with what to do."""

import pytest

from tests.hard.broken import Broken, broken

ALL = broken()


def name(one: Broken) -> str:
    return f"{one.path.parent.name}/{one.path.stem}"


def test_there_are_enough() -> None:
    assert len(ALL) >= 60


@pytest.mark.parametrize("one", ALL, ids=name)
def test_what_is_broken_is_told_where_it_is(one: Broken) -> None:
    assert one.found() == one.expected()
    assert one.expected()


@pytest.mark.parametrize("one", ALL, ids=name)
def test_a_finding_lies_in_the_broken_file_and_says_what_to_do(one: Broken) -> None:
    for finding in one.findings():
        assert finding.span.source.path == one.place
        assert finding.help
        assert finding.message[-1] not in ".!"
