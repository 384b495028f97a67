"""The markup does what its examples say."""

import pytest

from tests.language.examples import Example, examples

ALL = list(examples())


@pytest.mark.parametrize("example", ALL, ids=lambda one: f"{one.file.stem}:{one.line}")
def test_an_example_is_read_as_it_says(example: Example) -> None:
    assert example.found() == example.expected


def test_there_are_examples_of_everything() -> None:
    assert {example.kind for example in ALL} == {
        "record",
        "kit",
        "front",
        "body",
        "condition",
        "step",
    }
