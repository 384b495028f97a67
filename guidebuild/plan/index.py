"""The repairability index of Regulation (EU) 2023/1669 Annex IV point 5, as far as a record can tell it.

Every figure is as restated by secondary sources, not read in the law: whatever is printed of it is an estimate
by the author and no declared index. Weights are exact hundredths, so all arithmetic is decimal. Only the index
itself is rounded, to two decimals; no source says which way a tie goes, so TIE says what is done here.
"""

from collections.abc import Iterable, Mapping
from decimal import ROUND_HALF_UP, Decimal

LABEL = (
    "estimate by the author, after Regulation (EU) 2023/1669 Annex IV as restated by secondary sources; "
    "not a declared index"
)
TIE = "rounded to two decimals, a tie away from zero (no source gives the direction)"

_FLAT = {"BAT": 30, "DA": 30, "BC": 10, "FFC": 5, "RFC": 5, "EC": 5, "BUT": 5, "MIC": 5, "SPK": 5}
_FOLDING = {
    "BAT": 25, "DA": 25, "BC": 9, "FFC": 4, "RFC": 4, "EC": 4, "BUT": 4, "MIC": 4, "SPK": 4, "FM": 17,
}  # fmt: skip
_DEPTH = ((2, 5), (5, 4), (10, 3), (15, 2))  # so many steps at most: so many points; more: 1
FASTENERS = {"reusable": 5, "resupplied": 3, "removable": 1}
TOOLS = {
    "no tools": 5,
    "basic tools": 4,
    "supplied with the spare part": 3,
    "supplied with the product": 2,
    "commercially available tools": 1,
}
_PARAMETERS = {"SDD": 25, "SF": 15, "ST": 15, "SSP": 15, "SSU": 15, "SRI": 15}
_CLASSES = (("A", "4.00"), ("B", "3.35"), ("C", "2.55"), ("D", "1.75"), ("E", "1.00"))
ABSENT = 5  # the score of a priority part that the product does not have


def weights(folding: bool = False) -> dict[str, Decimal]:
    """The priority parts with their weights; they sum to 1."""
    table = _FOLDING if folding else _FLAT
    return {part: Decimal(weight) / 100 for part, weight in table.items()}


def depth_points(steps: int) -> int:
    """Points for the steps that it takes to remove a part."""
    return next((points for most, points in _DEPTH if steps <= most), 1)


def parameter(scores: Mapping[str, Iterable[int]], folding: bool = False) -> Decimal:
    """The weighted score over the priority parts; of several instances of a part the lowest counts."""
    return sum(
        (
            weight * min(scores.get(part, ()), default=ABSENT)
            for part, weight in weights(folding).items()
        ),
        Decimal(0),
    )


def exactly(parameters: Mapping[str, Decimal]) -> Decimal:
    """The index before it is rounded. All six parameters are needed (KeyError: our own mistake)."""
    return sum(
        (Decimal(share) / 100 * parameters[name] for name, share in _PARAMETERS.items()), Decimal(0)
    )


def rounded(exact: Decimal) -> Decimal:
    """The index to two decimals."""
    return exact.quantize(Decimal("0.01"), ROUND_HALF_UP)


def letter(index: Decimal) -> str:
    """The class of a rounded index."""
    return next(name for name, least in _CLASSES if index >= Decimal(least))
