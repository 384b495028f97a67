"""Which plural form a number takes in a language, by the rules of CLDR (UTS 35, Language Plural Rules)."""

from collections.abc import Callable
from decimal import Decimal
from functools import cache

from guidebuild.translate.cldr.locale import locale

Operands = dict[str, Decimal]
Test = Callable[[Operands], bool]


def plural(number: Decimal | int, language: str) -> str:
    """`zero`, `one`, `two`, `few`, `many` or `other`; `1.0` and `1` may differ, as they do in speech."""
    operands = _operands(Decimal(number))
    for name, rule in locale(language).plurals:
        if _test(rule)(operands):
            return name
    return "other"


def categories(language: str) -> tuple[str, ...]:
    """The forms that a language has, `other` last."""
    order = ("zero", "one", "two", "few", "many")
    there = {name for name, _ in locale(language).plurals}
    return (*(name for name in order if name in there), "other")


def _operands(number: Decimal) -> Operands:
    """n: the value; i: whole part; v, f: figures behind the point and what they say; w, t: without zeros."""
    whole, _, fraction = format(abs(number), "f").partition(".")
    short = fraction.rstrip("0")
    return {
        "n": abs(number),
        "i": Decimal(whole),
        "v": Decimal(len(fraction)),
        "f": Decimal(fraction or 0),
        "w": Decimal(len(short)),
        "t": Decimal(short or 0),
        "e": Decimal(0),
        "c": Decimal(0),
    }


@cache
def _test(rule: str) -> Test:
    ways = [[_relation(one) for one in way.split(" and ")] for way in rule.split(" or ")]
    return lambda operands: any(all(test(operands) for test in way) for way in ways)


def _relation(text: str) -> Test:
    """`i mod 10 not in 2..4,7`: whole numbers only, so a fraction is in no range."""
    left, _, wanted = text.partition(" in ")
    holds = not left.endswith(" not")
    operand, _, modulus = left.removesuffix(" not").partition(" mod ")
    ranges = [one.partition("..") for one in wanted.split(",")]
    bounds = [(int(low), int(high or low)) for low, _, high in ranges]

    def test(operands: Operands) -> bool:
        value = operands[operand] % int(modulus) if modulus else operands[operand]
        inside = value == int(value) and any(low <= value <= high for low, high in bounds)
        return inside == holds

    return test
