"""Numbers as a language writes them, and read back by value: 1.3 is `1,3` in German and never 13."""

import re
import unicodedata
from dataclasses import dataclass
from decimal import Decimal

from guidebuild.translate.cldr.locale import locale

_SPACES = "\u00a0\u202f\u2009"
_GROUPS = "'’٬" + _SPACES
_NUMBER = re.compile(rf"\d(?:[\d.,٫{_GROUPS}]*\d)?")


@dataclass(frozen=True, slots=True)
class Figure:
    """A number in a text: what it may mean (the likeliest first), and where it stands."""

    values: tuple[Decimal, ...]
    start: int
    end: int
    text: str


def write_number(value: Decimal, language: str) -> str:
    """The value with the language's separators; figures behind the point stay as given, zeros too."""
    figures = locale(language)
    whole, point, fraction = format(abs(value), "f").partition(".")
    sign = "-" if value < 0 else ""
    groups = f"{int(whole):,}".replace(",", figures.group)
    return sign + groups + (figures.decimal + fraction if point else "")


def figures_in(text: str, language: str) -> list[Figure]:
    """All numbers of a text, in order. Any digits of Unicode count; a number may be read in two ways.

    The language's own reading comes first, then the source's (a point before the fraction), since a
    translator may leave a number as it was: only a changed value is a mistake.
    """
    found = []
    for match in _NUMBER.finditer(text):
        values = readings(match[0], language)
        if values:
            found.append(Figure(values, match.start(), match.end(), match[0]))
    return found


def readings(written: str, language: str) -> tuple[Decimal, ...]:
    """What a written number may mean in a language; empty where it is no number at all."""
    plain = "".join(_digit(letter) for letter in written)
    figures = locale(language)
    ways = ((figures.decimal, figures.group), (".", ","), ("٫", "٬"))
    values = [_value(plain, decimal, group) for decimal, group in ways]
    return tuple(dict.fromkeys(value for value in values if value is not None))


def _digit(letter: str) -> str:
    return str(unicodedata.digit(letter)) if letter.isdecimal() else letter


def _value(written: str, decimal: str, group: str) -> Decimal | None:
    """Strict: groups of three, one decimal sign; `1.3` is nothing where the point parts thousands."""
    whole, sign, fraction = written.partition(decimal)
    if sign and not (fraction.isascii() and fraction.isdigit()):
        return None
    parts = re.split(f"[{re.escape(group)}{_SPACES}'’]", whole)
    if not all(part.isascii() and part.isdigit() for part in parts):
        return None
    if len(parts) > 1 and (len(parts[0]) > 3 or any(len(part) != 3 for part in parts[1:])):
        return None
    return Decimal("".join(parts) + (f".{fraction}" if sign else ""))
