"""Options become numbered configurations; values that nothing tells apart are merged first."""

import pytest

from guidebuild.device.condition import Both, Condition, Either, Is, Not
from guidebuild.device.option import Option, Origin, Value
from guidebuild.guide.configurations import MOST, Configurations, TooManyConfigurations
from guidebuild.guide.merging import axes
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source

NOWHERE = Span(Source("guide.md", ""), 0, 0)


def option(name: str, *values: str) -> Option:
    said = Said(name, NOWHERE)
    several = tuple(Value(value, Said(value, NOWHERE)) for value in values)
    return Option(name, said, several, Origin.DEVICE, NOWHERE)


def is_(name: str, *values: str) -> Condition:
    return Is(name, frozenset(values), NOWHERE)


def numbered(
    options: list[Option], conditions: list[Condition], *exclude: Condition
) -> Configurations:
    return Configurations(axes(options, [*conditions, *exclude]), exclude)


def test_values_that_no_condition_tells_apart_are_one() -> None:
    colours = option("colour", "red", "green", "blue", "grey")
    found = numbered([colours], [is_("colour", "red"), is_("colour", "red", "green")])
    assert found.total == 3
    assert [found.answers(n)["colour"] for n in range(3)] == [
        ("red",),
        ("green",),
        ("blue", "grey"),
    ]


def test_an_option_that_nothing_asks_makes_no_configuration() -> None:
    found = numbered([option("region", "eu", "us"), option("rev", "a", "b")], [is_("rev", "a")])
    assert found.total == 2
    assert found.answers(0)["region"] == ("eu", "us")


def test_seven_options_and_four_conditions_are_twenty_four() -> None:
    # 4 * 5 * 6 * 8 * 9 * 10 * 6 = 518,400 combinations; the example of the design
    sizes = {"a": 4, "b": 5, "c": 6, "d": 8, "e": 9, "f": 10, "g": 6}
    options = [option(name, *(f"v{n}" for n in range(size))) for name, size in sizes.items()]
    conditions = [is_("a", "v0"), is_("a", "v0", "v1"), is_("b", "v2"), is_("c", "v1")]
    conditions += [is_("d", "v0", "v3")]
    assert numbered(options, conditions).total == 24


def test_a_condition_is_a_set_of_numbers() -> None:
    found = numbered(
        [option("rev", "a", "b"), option("form", "bare", "full", "new")],
        [is_("rev", "a"), is_("form", "bare"), is_("form", "full")],
    )
    for condition, holds in (
        (is_("rev", "b"), lambda rev, form: rev == "b"),
        (Not(is_("form", "bare")), lambda rev, form: form != "bare"),
        (
            Both((is_("rev", "a"), is_("form", "new"))),
            lambda rev, form: (rev, form) == ("a", "new"),
        ),
        (
            Either((is_("rev", "a"), is_("form", "new"))),
            lambda rev, form: rev == "a" or form == "new",
        ),
    ):
        bits = found.bits(condition)
        for number in range(found.total):
            answers = found.answers(number)
            assert bool(bits >> number & 1) == holds(answers["rev"][0], answers["form"][0])


def test_equal_conditions_are_one_object() -> None:
    found = numbered([option("rev", *"abcdefgh")], [is_("rev", one) for one in "abcdefgh"])
    assert found.bits(is_("rev", "c")) is found.bits(is_("rev", "c"))
    assert found.bits(Not(is_("rev", "c"))) is found.bits(is_("rev", *"abdefgh"))
    assert found.bits(is_("rev", *"abcdefgh")) is found.everywhere
    assert found.both(found.bits(is_("rev", "c")), found.everywhere) is found.bits(is_("rev", "c"))


def test_what_is_excluded_has_no_number() -> None:
    never = Both((is_("rev", "a"), is_("form", "full")))
    found = numbered([option("rev", "a", "b"), option("form", "bare", "full")], [], never)
    assert found.total == 3
    assert found.everywhere == 0b111
    together = [(found.answers(n)["rev"][0], found.answers(n)["form"][0]) for n in range(3)]
    assert ("a", "full") not in together
    assert found.bits(never) == 0
    assert found.bits(is_("form", "full")).bit_count() == 1


def test_more_than_a_million_are_refused_and_the_options_named() -> None:
    names = [f"o{n}" for n in range(21)]
    options = [option(name, "no", "yes") for name in names]
    with pytest.raises(TooManyConfigurations, match="2097152 configurations") as refused:
        numbered(options, [is_(name, "yes") for name in names])
    assert refused.value.count == 2 * MOST
    assert refused.value.options[0] == ("o0", 2)


def test_a_million_are_numbered() -> None:
    names = [f"o{n}" for n in range(20)]
    options = [option(name, "no", "yes") for name in names]
    found = numbered(options, [is_(name, "yes") for name in names])
    assert found.total == MOST
    assert found.bits(Both((is_("o0", "yes"), is_("o19", "yes")))).bit_count() == MOST // 4


def test_told_in_the_options_own_words() -> None:
    found = numbered(
        [option("rev", "a", "b"), option("form", "bare", "full", "new")],
        [is_("rev", "a"), is_("form", "bare"), is_("form", "full")],
    )
    words = {
        "": is_("rev", "a", "b"),
        "only when rev = b": is_("rev", "b"),
        "only when form != bare": Not(is_("form", "bare")),
        "only when rev = a and form = bare": Both((is_("rev", "a"), is_("form", "bare"))),
        "except when rev = a and form = bare": Not(Both((is_("rev", "a"), is_("form", "bare")))),
    }
    for expected, condition in words.items():
        assert found.tell(found.bits(condition)).words == expected


def test_told_against_where_the_step_is_shown() -> None:
    found = numbered(
        [option("rev", "a", "b"), option("form", "bare", "full")],
        [is_("rev", "a"), is_("form", "bare")],
    )
    both = found.bits(Both((is_("rev", "a"), is_("form", "bare"))))
    assert found.tell(both, found.bits(is_("rev", "a"))).words == "only when form = bare"
    assert found.tell(both, both).words == ""


def test_what_can_not_be_told_shortly_is_counted_and_listed() -> None:
    names = [f"o{n}" for n in range(6)]
    options = [option(name, "no", "yes") for name in names]
    found = numbered(options, [is_(name, "yes") for name in names])
    odd = sum(1 << n for n in range(64) if n.bit_count() % 2)  # an odd number of yes
    told = found.tell(odd)
    assert told.words.startswith(
        "only in 32 of 64 configurations, which o0, o1, o2, o3, o4, o5 decide"
    )
    assert told.count == 32
    assert len(told.full) == 32
