"""Breaking torques and torques of tables and textbooks against what we ship.

Sources: ISO 898-7:1992 table 2 (as recalled: from memory, all but two cells given by the standard's formula);
the "T series" chart for ordinary steel screws (published by a supplier, M1 to M68); Shigley, Mechanical
Engineering Design, 9th ed. example 8-3 and 10th ed. problem 8-30.
"""

from decimal import Decimal

import pytest

from guidebuild.device.strength import breaking_torque, surely_breaks_at
from guidebuild.device.units import amount, parse_quantity
from tests.outside.screws import screw, span_of

THREADS = ["M1", "M1.2", "M1.4", "M1.6", "M2", "M2.5", "M3", "M3.5", "M4", "M5", "M6", "M8", "M10"]
TABLE_2 = {
    "8.8": "0.033 0.075 0.12 0.16 0.37 0.82 1.5 2.4 3.6 7.6 13 33 66",
    "9.8": "0.036 0.082 0.13 0.18 0.40 0.90 1.7 2.7 3.9 8.3 14 36 72",
    "10.9": "0.040 0.092 0.14 0.20 0.45 1.0 1.9 3.0 4.4 9.3 16 40 81",
    "12.9": "0.045 0.10 0.16 0.22 0.50 1.1 2.1 3.3 4.9 10 17 44 90",
}
CELLS = [
    (thread, strength, Decimal(cell))
    for strength, row in TABLE_2.items()
    for thread, cell in zip(THREADS, row.split(), strict=True)
]
# The formula gives 2.63 and 2.95; the recalled table rounds them up to 2.7 and 3.0.
ROUNDED_OTHERWISE = {("M3.5", "9.8"), ("M3.5", "10.9")}


def two_figures(value: Decimal) -> Decimal:
    return Decimal(f"{value:.2g}")


@pytest.mark.parametrize(("thread", "strength", "printed"), CELLS)
def test_breaking_torques_of_table_2(thread: str, strength: str, printed: Decimal) -> None:
    torque = breaking_torque(thread, strength)
    assert torque is not None
    if (thread, strength) in ROUNDED_OTHERWISE:
        assert abs(torque - printed) / printed < Decimal("0.03")
    elif printed != Decimal("0.075"):
        assert two_figures(torque) == printed
    else:  # 0.0755: the recalled table cuts where we round
        assert two_figures(torque) in {Decimal("0.075"), Decimal("0.076")}


def test_outside_the_standard_nothing_is_said() -> None:
    assert breaking_torque("M12", "8.8") is None
    assert breaking_torque("M3", "4.8") is None
    assert surely_breaks_at(screw("ST2.2x6.5 pan PH0")) is None
    assert surely_breaks_at(screw("M3x6 set hex 1.5")) is None


def test_the_class_taken_for_a_screw() -> None:
    taken = {
        words: surely_breaks_at(screw(words))
        for words in ("M3x8 pan", "M3x8 pan 8.8", "M3x8 pan 4.8")
    }
    assert [found[1] for found in taken.values() if found] == ["12.9", "8.8", "8.8"]


T_SERIES = {
    "M1": "0.0195", "M1.2": "0.037", "M1.4": "0.058", "M1.6": "0.086", "M2": "0.176", "M2.5": "0.36",
    "M3": "0.63", "M3.5": "1.0", "M4": "1.5", "M5": "3.0", "M6": "5.2", "M8": "12.5", "M10": "24.5",
}  # fmt: skip


@pytest.mark.parametrize(("thread", "chart"), T_SERIES.items())
def test_a_usual_torque_is_never_told_and_a_slipped_point_always(thread: str, chart: str) -> None:
    """The rule must leave alone what the chart gives, up to 2.4 times as much for strong screws."""
    limit = surely_breaks_at(screw(f"{thread}x10 pan"))
    assert limit is not None
    usual = Decimal(chart)
    assert usual < limit[0]
    assert usual * 10 > limit[0]


def newton_metres(words: str) -> Decimal:
    quantity = parse_quantity(words, span_of(words))
    assert quantity is not None
    found = amount(quantity, "torque")
    assert found is not None
    return found


def test_worked_examples_of_a_textbook() -> None:
    """T = K F d with K = 0.2 (Shigley, equation 8-27), in the book's own units."""
    pound_force, inch = Decimal("4.4482216152605"), Decimal("0.0254")
    example = Decimal("0.2") * 25000 * pound_force * Decimal("0.75") * inch
    assert newton_metres("3750 lbf·in") == pytest.approx(example, rel=Decimal("1e-12"))
    problem = Decimal("0.2") * 13800 * pound_force * Decimal("0.5") * inch
    assert newton_metres("115 lbf·ft") == pytest.approx(problem, rel=Decimal("1e-12"))
