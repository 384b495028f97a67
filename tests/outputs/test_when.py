"""Conditions in words and in the form that the script evaluates, against each configuration one by one."""

from hypothesis import given
from hypothesis import strategies as st

from guidebuild.device.option import Option, Origin, Value
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.merging import Axis
from guidebuild.outputs.html.page.when import Conditions
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.messages.sayer import Sayer

NOWHERE = Span(Source("x", ""), 0, 0)
AXES = (
    Axis("revision", (("a",), ("b",), ("c",))),
    Axis("supplied", (("bare",), ("complete",))),
    Axis("region", (("eu", "uk"), ("us",))),
)


def option(axis: Axis) -> Option:
    """The question of an axis; each value's label is its id in capitals."""
    values = (value for some in axis.classes for value in some)
    labelled = tuple(Value(value, Said(value.upper(), NOWHERE)) for value in values)
    return Option(
        axis.option, Said(f"Which {axis.option}?", NOWHERE), labelled, Origin.DEVICE, NOWHERE
    )


def conditions() -> tuple[Configurations, Conditions]:
    configurations = Configurations(AXES)
    return configurations, Conditions(Sayer("en"), configurations, tuple(map(option, AXES)))


def holds(data: str, answers: dict[str, tuple[str, ...]]) -> bool:
    """What the script does, for a reader who has answered everything."""
    return any(
        all(
            set(leaf.partition("=")[2].split(",")) & set(answers[leaf.partition("=")[0]])
            for leaf in box.split("&")
        )
        for box in data.split("|")
    )


@given(st.integers(0, 2**12 - 1), st.integers(1, 2**12 - 1))
def test_the_script_shows_it_where_the_proof_has_it(where: int, among: int) -> None:
    configurations, told = conditions()
    when = told.when(where, among)
    for number in range(configurations.total):
        if among >> number & 1:
            there = bool(where >> number & 1)
            if when is None:
                assert (where & among) in (among, 0) and there is (where & among == among)
            elif when.data:
                assert holds(when.data, configurations.answers(number)) is there


def test_words() -> None:
    configurations, told = conditions()
    bits = {str(configurations.answers(n)): 1 << n for n in range(configurations.total)}
    b = sum(bit for answers, bit in bits.items() if "('b',)" in answers)
    when = told.when(b, configurations.everywhere)
    assert when is not None
    assert when.plain == "the answer to “Which revision?” is B"
    assert "".join(piece.words for piece in when.short) == "Q1 = B"
    assert told.options_told() == {"revision"}
