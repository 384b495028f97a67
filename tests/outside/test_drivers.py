"""Which driver fits: kinds and sizes by their standards (ISO 4757, ISO 10664, ISO 2936, ISO 2380-1)."""

import pytest

from guidebuild.device.drivers import by_standards, drive_meant, fits, says_size
from tests.outside.screws import screw

FITS = """
TX8 TX8
TR8 TX8
hex 2.5 hex 2.5
hex-pin 2.5 hex 2.5
PH1 PH1
PH PH1
slot 0.8x4 slot 0.8
PZ2 PZ2
"""
DOES_NOT = """
TX8 TR8
TX7 TX8
PH1 PZ1
PH0 PH1
JIS1 PH1
hex 2 hex 2.5
slot 0.5x3 slot 0.8
TX8 hex 2.5
"""
NAMES = sorted(
    ("hex 2.5", "hex-pin 2.5", "hex 2", "slot 0.8x4", "slot 0.8", "slot 0.5x3"), key=len
)[::-1]


def pair(row: str) -> tuple[str, str]:
    """A row's driver and drive; some have a space in their name."""
    driver = next((name for name in NAMES if row.startswith(name + " ")), row.split(" ")[0])
    return driver, row[len(driver) + 1 :]


@pytest.mark.parametrize("row", FITS.strip().splitlines())
def test_fits(row: str) -> None:
    assert fits(*pair(row))


@pytest.mark.parametrize("row", DOES_NOT.strip().splitlines())
def test_does_not_fit(row: str) -> None:
    assert not fits(*pair(row))


MEANT = {
    "TX8": "TX8",
    "Torx 8": "TX8",
    "T8": "TX8",
    "PH 1": "PH1",
    "hex 2,5": "hex 2.5",
    "a hammer": None,
    "": None,
}


@pytest.mark.parametrize(("words", "drive"), MEANT.items())
def test_names_of_drivers(words: str, drive: str | None) -> None:
    assert drive_meant(words) == drive


# M2, M3 and M8 pan: the ISO number, that of the withdrawn DIN 7985, and the one usual in Japan (JIS B 1111)
DIFFER = {
    "M2x4 pan PH": {"PH0": ("ISO 7045",), "PH1": ("DIN 7985", "JIS B 1111")},
    "M3x6 pan PH": {"PH1": ("ISO 7045", "DIN 7985", "DIN 967"), "PH2": ("JIS B 1111",)},
    "M8x20 pan PH": {"PH4": ("ISO 7045",), "PH3": ("JIS B 1111",)},
}


@pytest.mark.parametrize(("words", "drivers"), DIFFER.items())
def test_standards_that_differ(words: str, drivers: dict[str, tuple[str, ...]]) -> None:
    found = by_standards(screw(words))
    for drive, standards in drivers.items():
        assert set(found[drive]) >= set(standards) - {"DIN 967"}


def test_a_named_standard_leaves_one() -> None:
    assert list(by_standards(screw("ISO 7045 M2 x 4 H"))) == ["PH0"]
    assert not says_size(screw("M2x4 pan PH"))
    assert says_size(screw("M2x4 pan PH1"))
