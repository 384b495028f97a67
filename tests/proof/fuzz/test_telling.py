"""Configurations told in words: read again, the words mean the very set that was to be told."""

from hypothesis import HealthCheck, given, seed, settings

from guidebuild.device.condition import Is
from guidebuild.device.option import Option, Origin
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.merging import axes
from tests.proof.fuzz.answers import numbered_of
from tests.proof.fuzz.dice import Dice, dice
from tests.proof.fuzz.ink import Ink
from tests.proof.fuzz.options import condition, option
from tests.proof.fuzz.retold import complaint, numbers


@seed(1)
@settings(max_examples=400, deadline=None, database=None, suppress_health_check=list(HealthCheck))
@given(dice())
def test_words_mean_the_set_that_they_tell(throws: Dice) -> None:
    ink = Ink()
    names = ["revision", "region", "supplied", "seen", "model"][: throws.number(1, 5)]
    asked = [
        option(ink, name, ["a", "b", "c", "d"][: throws.number(2, 4)], Origin.DEVICE)
        for name in names
    ]
    every = [Is(one.id, frozenset({value.id}), ink.span()) for one in asked for value in one.values]
    rare = condition(throws, ink, asked) if throws.often(30) else None
    exclude = () if rare is None else (rare,)
    configurations = Configurations(axes(asked, [*every, *exclude]), exclude)
    meanings = numbered_of(tuple(asked), exclude, configurations)
    where = _some(throws, ink, configurations, asked)
    among = (
        where | _some(throws, ink, configurations, asked)
        if throws.often(50)
        else configurations.everywhere
    )
    told = configurations.tell(where, among)
    wrong = complaint(
        told, numbers(where, configurations), numbers(among, configurations), meanings
    )
    assert wrong is None, wrong


def _some(throws: Dice, ink: Ink, configurations: Configurations, asked: list[Option]) -> int:
    """What a few conditions say, or a set without any shape."""
    found = 0
    for _ in range(throws.number(1, 3)):
        found |= configurations.bits(condition(throws, ink, asked, depth=2))
    if throws.often(25):
        found ^= sum(1 << number for number in range(configurations.total) if throws.often(20))
    return found
