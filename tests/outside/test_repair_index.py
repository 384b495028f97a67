"""Points, index and steps against the test vectors of the reference file.

Source: Regulation (EU) 2023/1669 Annex IV point 5 as restated by secondary sources, the vectors computed from it;
Decision (EU) 2016/1371 Appendix a) ii) and French decree 2020-1757 for what a step is.
"""

from decimal import Decimal

import pytest

from guidebuild.plan.index import (
    FASTENERS,
    TOOLS,
    depth_points,
    exactly,
    letter,
    parameter,
    rounded,
    weights,
)
from guidebuild.plan.steps import Operation, steps

PARTS = tuple(weights())


def same(score: int) -> dict[str, Decimal]:
    return dict.fromkeys(("SDD", "SF", "ST", "SSP", "SSU", "SRI"), Decimal(score))


@pytest.mark.parametrize("folding", [False, True])
def test_the_weights_sum_to_one(folding: bool) -> None:
    assert sum(weights(folding).values()) == 1


@pytest.mark.parametrize(
    ("score", "index", "name"),
    [(5, "5.00", "A"), (1, "1.00", "E"), (4, "4.00", "A"), (3, "3.00", "C"), (2, "2.00", "D")],
)
def test_vectors_1_to_5_every_score_the_same(score: int, index: str, name: str) -> None:
    assert rounded(exactly(same(score))) == Decimal(index)
    assert letter(Decimal(index)) == name


def test_vector_6_parts_3_the_rest_5() -> None:
    of_parts = parameter({part: [3] for part in PARTS})
    given = same(5) | dict.fromkeys(("SDD", "SF", "ST"), of_parts)
    assert rounded(exactly(given)) == Decimal("3.90")
    assert letter(Decimal("3.90")) == "B"


def test_vector_7_the_index_is_rounded_before_the_class() -> None:
    assert rounded(Decimal("3.996")) == Decimal("4.00")
    assert letter(rounded(Decimal("3.996"))) == "A"


STEPS = {"BAT": 4, "DA": 11, "BC": 2, "FFC": 9, "RFC": 9, "EC": 12, "BUT": 16, "MIC": 12, "SPK": 7}


def test_vector_8_points_for_depth() -> None:
    points = {part: depth_points(count) for part, count in STEPS.items()}
    assert list(points.values()) == [4, 2, 5, 3, 3, 2, 1, 2, 3]
    assert parameter({part: [one] for part, one in points.items()}) == Decimal("3.00")


def test_vector_9_is_a_tie_and_goes_up() -> None:
    kinds = dict.fromkeys(PARTS, "reusable") | {"BAT": "resupplied", "DA": "resupplied"}
    fasteners = parameter({part: [FASTENERS[kind]] for part, kind in kinds.items()})
    tools = dict.fromkeys(PARTS, "basic tools") | {"BC": "no tools"}
    held = parameter({part: [TOOLS[kind]] for part, kind in tools.items()})
    assert (fasteners, held) == (Decimal("3.80"), Decimal("4.10"))
    given = {
        "SDD": Decimal(3), "SF": fasteners, "ST": held,
        "SSP": Decimal(3), "SSU": Decimal(5), "SRI": Decimal(3),
    }  # fmt: skip
    assert exactly(given) == Decimal("3.585")
    assert rounded(exactly(given)) == Decimal("3.59")


@pytest.mark.parametrize(
    ("count", "points"),
    [(1, 5), (2, 5), (3, 4), (5, 4), (6, 3), (10, 3), (11, 2), (15, 2), (16, 1), (99, 1)],
)
def test_both_edges_of_each_step_of_the_depth_scale(count: int, points: int) -> None:
    assert depth_points(count) == points


def test_of_several_instances_the_lowest_counts_and_an_absent_part_takes_5() -> None:
    assert parameter({"BAT": [5, 1]}) == Decimal("5.00") - Decimal("0.30") * 4


def operations(text: str) -> list[Operation]:
    """`X` an act with tool X, `lift` a part that comes off by hand, `hand` a plug pulled by hand."""
    return [
        Operation(None, word == "lift") if word in ("lift", "hand") else Operation(word)
        for word in text.split()
    ]


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("X X X lift", 1),
        ("X X X Y lift", 2),
        ("X X X lift Y lift", 2),
        ("X Y X lift", 3),
        ("X hand X lift", 1),
    ],
)
def test_steps_as_both_laws_count_them(text: str, count: int) -> None:
    assert steps(operations(text)) == count
