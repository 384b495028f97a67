"""Numbers and leaders on 200 random views: no leader crosses another, no number lies on anything.

Rules: ISO 6433 (numbers outside the outline, in rows), ISO 128-2 (oblique, in steps of 15 degrees).
"""

from math import degrees

import pytest

from guidebuild.draw.crossing import crosses
from guidebuild.draw.leaders import HIGH, Leader, Target
from guidebuild.draw.placing import place
from guidebuild.draw.svg import Box
from tests.draw.views import VIEWS, a_view


@pytest.fixture(scope="module")
def views() -> list[tuple[list[Target], Box, list[Leader]]]:
    found = []
    for seed in range(VIEWS):
        targets, outline, room = a_view(seed)
        found.append((targets, outline, place(targets, outline, room)))
    return found


Views = list[tuple[list[Target], Box, list[Leader]]]


def pairs(leaders: list[Leader]) -> list[tuple[Leader, Leader]]:
    return [(a, b) for i, a in enumerate(leaders) for b in leaders[:i]]


def test_no_leader_crosses_another(views: Views) -> None:
    for _, _, leaders in views:
        for a, b in pairs(leaders):
            assert not crosses((a.bend, a.tip), (b.bend, b.tip))


def test_no_number_lies_on_another_or_on_a_leader(views: Views) -> None:
    for _, _, leaders in views:
        for a, b in pairs(leaders):
            assert not a.cell.touches(b.cell)
            assert not through(a, b.cell)
            assert not through(b, a.cell)


def through(leader: Leader, cell: Box) -> bool:
    """Whether points of the oblique part lie in a cell: a second way to ask, by walking along it."""
    (x0, y0), (x1, y1) = leader.bend, leader.tip
    walk = ((x0 + (x1 - x0) * i / 200, y0 + (y1 - y0) * i / 200) for i in range(201))
    return any(cell.x < x < cell.right and cell.y < y < cell.bottom for x, y in walk)


def test_every_number_stands_outside_in_its_row(views: Views) -> None:
    for targets, outline, leaders in views:
        for one in leaders:
            assert not one.cell.touches(outline)
            assert one.cell.height >= HIGH
            assert one.cell.width >= 5 * len(targets[one.target].label)
            assert (one.cell.right <= outline.x) if one.side < 0 else (one.cell.x >= outline.right)


def test_leaders_are_oblique_in_steps_of_15_degrees(views: Views) -> None:
    for _, _, leaders in views:
        for one in leaders:
            steps = abs(degrees(one.angle)) % 180 / 15
            assert steps == pytest.approx(round(steps), abs=1e-6)
            assert round(steps) % 12 not in {0, 6}  # neither level nor upright


def test_almost_everything_finds_a_place(views: Views) -> None:
    asked = sum(len(targets) for targets, _, _ in views)
    placed = sum(len(leaders) for _, _, leaders in views)
    assert asked > 1000
    assert placed / asked >= 0.985


def test_few_targets_always_find_a_place_at_15_or_30_degrees(views: Views) -> None:
    for targets, _, leaders in views:
        if len(targets) <= 4:
            assert len(leaders) == len(targets)
            assert all(
                min(abs(degrees(x.angle)) % 180, 180 - abs(degrees(x.angle)) % 180) < 31
                for x in leaders
            )


def test_a_leader_ends_at_the_ring_and_points_at_its_middle() -> None:
    (one,) = place([Target("1", (20, 30), 4.5)], Box(0, 0, 100, 100), Box(-40, -20, 180, 140))
    x, y = one.tip
    assert (x - 20) ** 2 + (y - 30) ** 2 == pytest.approx(4.5**2)


def test_nothing_to_place() -> None:
    assert place([], Box(0, 0, 10, 10), Box(-40, -20, 90, 50)) == []
