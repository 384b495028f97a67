"""Torque and other quantities as people write them, against pint and NIST SP 811 appendix B.8."""

from decimal import Decimal

import pytest

from guidebuild.device.tables import rows
from guidebuild.device.units import amount, in_si, parse_quantity, parse_seconds, unit_of
from tests.needs import library
from tests.outside.screws import span_of

pint = library("pint")
registry = pint.UnitRegistry()

# What pint calls the units of our table (it can't read many of the trade's spellings, so the name is given).
IN_PINT = {
    "N·m": "N*m", "mN·m": "mN*m", "cN·m": "cN*m", "dN·m": "dN*m", "kN·m": "kN*m", "µN·m": "uN*m",
    "N·cm": "N*cm", "N·mm": "N*mm", "kgf·m": "kgf*m", "kgf·cm": "kgf*cm", "kgf·mm": "kgf*mm",
    "gf·cm": "gf*cm", "lbf·in": "lbf*in", "lbf·ft": "lbf*ft", "ozf·in": "ozf*in", "dyn·cm": "dyn*cm",
    "°C": "degC", "°F": "degF", "Ω": "ohm", "mΩ": "mohm", "kΩ": "kohm", "MΩ": "Mohm", "°": "degree",
    "%": "percent", "r/min": "rpm", "L": "liter", "ml": "ml", "lx": "lux", "d": "day",
}  # fmt: skip
SI = {
    "torque": "N*m", "length": "m", "time": "s", "temperature": "K", "mass": "kg", "force": "N",
    "pressure": "Pa", "voltage": "V", "current": "A", "resistance": "ohm", "power": "W", "energy": "J",
    "frequency": "Hz", "rotation": "Hz", "capacitance": "F", "volume": "m**3", "angle": "rad",
    "ratio": "dimensionless", "illuminance": "lux",
}  # fmt: skip
TABLE = [row for row in rows("units") if row["quantity"] != "level"]


@pytest.mark.parametrize("row", TABLE, ids=lambda row: row["unit"])
def test_every_factor_is_that_of_pint(row: dict[str, str]) -> None:
    unit = unit_of(row["unit"])
    assert unit is not None
    ours = Decimal("7.3") * unit.factor + unit.offset
    theirs = registry.Quantity(7.3, IN_PINT.get(row["unit"], row["unit"]))
    if unit.measures == "rotation":  # pint counts radians; a revolution a minute is 1/60 a second
        theirs = theirs / (2 * 3.141592653589793) / registry.radian
    assert float(ours) == pytest.approx(theirs.to(SI[unit.measures]).magnitude, rel=1e-12)


SPELLINGS = """
N·m    | Nm, N·m, N⋅m, N m, N.m, N-m, newton metre, newton-meter
cN·m   | cNm, cN·m, cN m
mN·m   | mNm, mN·m, mN m
lbf·in | in-lb, in·lbf, lbf·in, in lb, lb-in, inch pounds, in-lbs, in.lb
lbf·ft | ft-lb, ft·lbf, lbf·ft, lbf ft, foot-pounds
kgf·cm | kgf·cm, kgf cm, kg-cm, kgf*cm
kgf·m  | kgf·m, kgf m, kgm
ozf·in | ozf·in, oz-in, in-oz, ozf in
gf·cm  | gf·cm, g-cm
"""


@pytest.mark.parametrize("row", SPELLINGS.strip().splitlines(), ids=lambda row: row.split("|")[0])
def test_ways_to_write_a_torque(row: str) -> None:
    symbol, _, spellings = row.partition("|")
    found = {spelling.strip(): unit_of(spelling) for spelling in spellings.split(",")}
    assert {
        name for name, unit in found.items() if not unit or unit.symbol != symbol.strip()
    } == set()


# NIST SP 811, appendix B.8: the factor as printed, to seven figures.
PRINTED = {
    "kgf·m": "9.80665",
    "kgf·cm": "0.0980665",
    "lbf·in": "0.1129848",
    "ozf·in": "0.007061552",
    "lbf·ft": "1.355818",
    "psi": "6894.757",
    "lb": "0.4535924",
    "oz": "0.02834952",
    "lbf": "4.448222",
}


@pytest.mark.parametrize(("symbol", "printed"), PRINTED.items())
def test_factors_as_nist_prints_them(symbol: str, printed: str) -> None:
    unit = unit_of(symbol)
    assert unit is not None
    assert f"{unit.factor:.7g}".rstrip("0") == f"{Decimal(printed):.7g}".rstrip("0")


def test_capitals_tell_units_apart() -> None:
    assert unit_of("mN·m") != unit_of("MN·m")
    assert unit_of("MN·m") is None
    assert unit_of("Mohm") != unit_of("mohm")


# words | value | unit | in SI, `-` where the unit is not known
QUANTITIES = """
0.30 N·m   | 0.30 | N·m    | 0.30
0,3 Nm     | 0.3  | Nm     | 0.3
30 %       | 30   | %      | 0.30
−5 °C      | -5   | °C     | 268.15
68 °F      | 68   | °F     | 293.15
1 000 h    | 1000 | h      | 3600000
5min       | 5    | min    | 300
3          | 3    |        | -
3 blorb    | 3    | blorb  | -
"""


@pytest.mark.parametrize("row", QUANTITIES.strip().splitlines(), ids=lambda row: row.split("|")[0])
def test_quantities(row: str) -> None:
    words, value, unit, si = (cell.strip() for cell in row.split("|"))
    found = parse_quantity(words, span_of(words))
    assert found is not None
    assert (found.value, found.unit) == (Decimal(value), unit)
    assert found.value.as_tuple() == Decimal(value).as_tuple()  # exactly as written
    known = in_si(found)
    assert (
        known is None
        if si == "-"
        else known is not None and abs(known - Decimal(si)) < Decimal("1e-20")
    )


@pytest.mark.parametrize("words", ["", "N·m", "about 3 mm", "1.2.3", "1,2,3 mm"])
def test_no_quantity(words: str) -> None:
    assert parse_quantity(words, span_of(words)) is None


def test_an_amount_of_the_wrong_kind_is_none() -> None:
    found = parse_quantity("3 mm", span_of("3 mm"))
    assert found is not None
    assert amount(found, "torque") is None
    assert amount(found, "length") == Decimal("0.003")


TIMES = {
    "90 s": 90,
    "5 min": 300,
    "2m10s": 130,
    "1 h 30 min": 5400,
    "1,5 s": Decimal("1.5"),
    "2m": 120,
}


@pytest.mark.parametrize(("words", "seconds"), TIMES.items())
def test_times(words: str, seconds: Decimal) -> None:
    assert parse_seconds(words) == seconds


@pytest.mark.parametrize("words", ["", "10", "5 mm", "s", "2m10", "10 s 2 m"])
def test_no_time(words: str) -> None:
    assert parse_seconds(words) is None
