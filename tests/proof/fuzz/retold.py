"""Words about configurations, read again as a reader would: do they mean the set that they tell?"""

import re
from collections.abc import Iterable

from guidebuild.guide.configurations import Configurations
from guidebuild.source.finding import Told
from tests.proof.oracle.conditions import Answers

COMPARISON = re.compile(r"(\S+) (=|!=|in) (\([^)]*\)|\S+)")
COUNTED = re.compile(
    r"only in (\d+) of (\d+) configurations, which (.+) decide; for one, when (.+)"
)


def means(words: str, answers: Answers) -> bool:
    """Whether `A and B`, or `(A and B) or C`, holds."""
    boxes = [box[1:-1] if box.startswith("(") else box for box in words.split(" or ")]
    return any(all(_holds(one, answers) for one in box.split(" and ")) for box in boxes)


def _holds(comparison: str, answers: Answers) -> bool:
    found = COMPARISON.fullmatch(comparison)
    assert found is not None, f"not to be read: {comparison!r}"
    option, how, values = found.groups()
    named = [value.strip() for value in values.strip("()").split(",")]
    return (answers[option] in named) is not (how == "!=")


def complaint(
    told: Told, where: set[int], among: set[int], every: dict[int, list[Answers]]
) -> str | None:
    """What is wrong with the words for `where`, said among `among`; None where they are right."""
    on, off = where & among, among - where
    if told.count != len(on):
        return f"{told.count} said, {len(on)} meant"
    if not on or not off:
        return None if told.words == "" else f"{told.words!r} where nothing need be said"
    for start, wanted in (("only when ", True), ("except when ", False)):
        if told.words.startswith(start):
            return _all(told.words.removeprefix(start), on if wanted else off, among, every)
    return _counted(told, on, off, every)


def _all(
    words: str, meant: set[int], among: set[int], every: dict[int, list[Answers]]
) -> str | None:
    for number in among:
        for answers in every[number]:
            if means(words, answers) != (number in meant):
                return f"{words!r} is wrong for {dict(answers)}"
    if words.count(" or ") > 2 or len(COMPARISON.findall(words)) > 6:
        return f"{words!r} is long"
    return None


def _counted(
    told: Told, on: set[int], off: set[int], every: dict[int, list[Answers]]
) -> str | None:
    """Too long to be said: the count, one box, and all of it in `full`."""
    found = COUNTED.fullmatch(told.words)
    if found is None or int(found[1]) != len(on) or int(found[2]) != told.total:
        return f"{told.words!r} for {len(on)} of {told.total}"
    box = {number for number in on | off if all(means(found[4], one) for one in every[number])}
    if not box or box & off:
        return f"{found[4]!r} is not one of them"
    listed = {number for number in on | off if any(_row(told.full, one) for one in every[number])}
    return None if listed == on else f"{told.full} lists {listed}"


def _row(rows: Iterable[tuple[tuple[str, tuple[str, ...]], ...]], answers: Answers) -> bool:
    return any(all(answers[option] in values for option, values in row) for row in rows)


def numbers(bits: int, configurations: Configurations) -> set[int]:
    """A set of configurations, number by number."""
    return {number for number in range(configurations.total) if bits >> number & 1}
