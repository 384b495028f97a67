"""Units as people write them, and what they are in SI, by exact factors.

Sources: SI brochure; NIST SP 811 appendix B.8 for what is not SI (the pound is 0.45359237 kg and the inch
25.4 mm, both exactly). Each row of `data/units.csv` says which.
"""

import re
import unicodedata
from dataclasses import dataclass
from decimal import Decimal
from functools import cache

from guidebuild.device.quantity import Quantity
from guidebuild.device.tables import rows
from guidebuild.source.span import Span

_NUMBER = r"[-+−±]?(?:\d{1,3}(?:[   ]\d{3})+|\d+)(?:[.,]\d+)?"
_QUANTITY = re.compile(rf"\s*({_NUMBER})\s*(.*?)\s*", re.DOTALL)
_TIMES = re.compile(
    r"\s*(?:(\d+)\s*h(?:ours?|rs?)?)?\s*(?:(\d+)\s*m(?:in(?:utes?|s)?)?)?\s*"
    r"(?:(\d+(?:[.,]\d+)?)\s*s(?:ec(?:onds?|s)?)?)?\s*"
)
_JOINTS = re.compile(r"(?<=[^\W\d_])[\s·⋅•∙*×._-]+(?=[^\W\d_])")


@dataclass(frozen=True, slots=True)
class Unit:
    """`symbol` is the proper spelling; a value times `factor` plus `offset` is the value in SI units."""

    symbol: str
    measures: str  # `torque`, `length`, `time`, `temperature`, ...
    factor: Decimal
    offset: Decimal
    source: str


def _plain(text: str) -> str:
    """One spelling for each way of joining: `N m`, `N·m`, `N-m`, `N.m` are all `Nm`."""
    return _JOINTS.sub("", unicodedata.normalize("NFKC", text.strip()).strip().rstrip("."))


@cache
def _spellings() -> dict[str, Unit]:
    table = {}
    for row in rows("units"):
        unit = Unit(
            row["unit"],
            row["quantity"],
            Decimal(row["factor"]),
            Decimal(row["offset"]),
            row["source"],
        )
        for spelling in (row["unit"], *row["spellings"].split("|")):
            table[_plain(spelling)] = unit
    return table


def unit_of(text: str) -> Unit | None:
    """The unit that these letters mean, or None. Capitals count (`mN·m` is not `MN·m`) but for words."""
    plain = _plain(text)
    return _spellings().get(plain) or (_spellings().get(plain.lower()) if len(plain) > 3 else None)


def in_si(quantity: Quantity) -> Decimal | None:
    """The value in the SI unit of its kind (N·m, m, s, K, ...), or None where the unit is not known."""
    unit = unit_of(quantity.unit)
    return None if unit is None else quantity.value * unit.factor + unit.offset


def amount(quantity: Quantity, measures: str) -> Decimal | None:
    """The value in SI if the unit measures this (`torque`, `length`, ...), else None."""
    unit = unit_of(quantity.unit)
    return in_si(quantity) if unit is not None and unit.measures == measures else None


def millimetres(quantity: Quantity) -> Decimal | None:
    """A length in mm, or None where it is none."""
    metres = amount(quantity, "length")
    return None if metres is None else metres * 1000


def parse_quantity(text: str, span: Span) -> Quantity | None:
    """`0.30 N·m`, `0,3 Nm`, `30 %`, `−5 °C`, `3`: None where no number stands first. The unit may be unknown.

    A comma is a decimal sign (ISO 80000-1); only a space groups thousands.
    """
    found = _QUANTITY.fullmatch(text)
    if found is None or re.match(r"[\d.,]", found[2]):
        return None
    number = re.sub(r"\s", "", found[1]).replace("−", "-").replace(",", ".").lstrip("±")
    return Quantity(Decimal(number), found[2], span)


def parse_seconds(text: str) -> Decimal | None:
    """`90 s`, `5 min`, `2m10s`, `1 h 30 min`: the time in seconds, or None. A bare `m` is minutes here."""
    found = _TIMES.fullmatch(text)
    if found is None or not any(found.groups()):
        return None
    hours, minutes, seconds = (Decimal((part or "0").replace(",", ".")) for part in found.groups())
    return hours * 3600 + minutes * 60 + seconds
