"""A number of the source is another number in the translation.

1.3 mm is `1,3 mm` in German and never `13 mm`: ten times the torque, or a screw that breaks the board. Numbers are
compared by value, whatever digits and separators a language uses. A small whole number may be spelt out.

Source: number forms of Unicode CLDR. Of 33,104 public translations 0.9 % were flagged by such a check; among the true
mistakes was 15-25 as 15-20.
"""

from collections.abc import Iterator
from decimal import Decimal

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category, Loudness
from guidebuild.translate.catalogue.pair import Pair, Slip
from guidebuild.translate.cldr.number import Figure, figures_in, write_number

RULE = Rule(category=Category.TRANSLATION, loudness=Loudness.ERROR)

MESSAGE = "{what}"

HELP = "{do}"

SPELT_OUT = 12  # whole numbers up to this one may stand as words


def check_pair(pair: Pair) -> Iterator[Slip]:
    wanted = figures_in(pair.segment.text, pair.source_language)
    left = _without_same(figures_in(pair.text, pair.language), wanted)
    missing = _without_same(wanted, figures_in(pair.text, pair.language))
    for figure in left:
        what, do = f"`{figure.text}` is not a number of the source", "take it out"
        if missing:
            instead = missing.pop(0)
            what = f"`{figure.text}` stands where the source has `{instead.text}`"
            do = _write(instead.values[0], pair.language)
        yield Slip(figure.start, figure.end, {"what": what, "do": do})
    for figure in missing:
        number = figure.values[0]
        if number != number.to_integral_value() or number > SPELT_OUT:
            what = f"the number `{figure.text}` of the source is missing"
            yield Slip(0, len(pair.text), {"what": what, "do": _write(number, pair.language)})


def _write(number: Decimal, language: str) -> str:
    return f"write `{write_number(number, language)}`, the source's number in this language's form"


def _without_same(some: list[Figure], others: list[Figure]) -> list[Figure]:
    """Those whose value none of the others has, each of the others used once."""
    left = list(others)
    rest = []
    for figure in some:
        twin = next((one for one in left if _same(figure.values, one.values)), None)
        if twin is None:
            rest.append(figure)
        else:
            left.remove(twin)
    return rest


def _same(some: tuple[Decimal, ...], others: tuple[Decimal, ...]) -> bool:
    return bool(set(some) & set(others))
