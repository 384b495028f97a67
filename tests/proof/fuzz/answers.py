"""Every combination of answers, without merging and without numbers, laid beside the numbered ones."""

from collections.abc import Sequence
from itertools import product

from guidebuild.device.condition import Condition
from guidebuild.device.option import Option
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.guide import Guide
from tests.proof.oracle.conditions import Answers, holds


def valid(options: Sequence[Option], exclude: Sequence[Condition]) -> list[Answers]:
    """All answers that no exclusion forbids."""
    ids = [option.id for option in options]
    rows = product(*([value.id for value in option.values] for option in options))
    every = [dict(zip(ids, row, strict=True)) for row in rows]
    return [one for one in every if not any(holds(out, one) for out in exclude)]


def numbered(guide: Guide, configurations: Configurations) -> dict[int, list[Answers]]:
    """By number of a configuration: the answers that it stands for."""
    return numbered_of(guide.options, guide.exclude, configurations)


def numbered_of(
    options: Sequence[Option], exclude: Sequence[Condition], configurations: Configurations
) -> dict[int, list[Answers]]:
    """Each combination of answers must stand in just one configuration."""
    found: dict[int, list[Answers]] = {number: [] for number in range(configurations.total)}
    merged = {number: configurations.answers(number) for number in found}
    for answers in valid(options, exclude):
        at = [
            number
            for number, classes in merged.items()
            if all(answers[option] in values for option, values in classes.items())
        ]
        assert len(at) == 1, f"{answers} are in configurations {at}"
        found[at[0]].append(answers)
    assert all(found.values()), "a configuration that nobody can have"
    return found
