"""The cheapest order costs what the cheapest of all orders costs, on 500 random devices of up to 12 moves."""

from functools import cache

import pytest

from guidebuild.plan.choose import choose
from guidebuild.plan.openings import can_lift
from guidebuild.plan.taking import take
from tests.plan.brute import deals, least, stumbles, toy, world_of
from tests.plan.records import bench
from tests.proof.fuzz.dice import seeded

DEVICES = 500
MOST = 12


@cache
def _cases() -> list[int]:
    """Seeds of devices that are small enough for brute force."""
    found: list[int] = []
    seed = 0
    while len(found) < DEVICES:
        device = toy(seeded(seed))
        of = bench(device)
        liftable = {part.key for part in device.parts if can_lift(of.layout, part)}
        if len(deals(world_of(device), liftable)) <= MOST:
            found.append(seed)
        seed += 1
    return found


@pytest.mark.parametrize("habits", [False, True])
def test_the_order_can_be_done_as_it_stands(habits: bool) -> None:
    """Act by act, by the plain simulator; also with all that a careful person holds to besides."""
    for seed in _cases():
        device = toy(seeded(seed))
        of = bench(device)
        liftable = {part.key for part in device.parts if can_lift(of.layout, part)}
        part = [one for one in device.parts if one.host is not None][-1]
        task = of.off(part.key)
        taken = None if task is None else take(of, [task], habits=habits)
        for acts in [] if taken is None else [taken.acts]:
            order = [(act.opening.verb, key) for act in acts for key in act.opening.keys]
            assert not stumbles(device, order, liftable), seed


@pytest.mark.parametrize("tenth", range(10))
def test_the_cost_equals_brute_force(tenth: int) -> None:
    wrong = {}
    for seed in _cases()[tenth::10]:
        device = toy(seeded(seed))
        of = bench(device)
        liftable = {part.key for part in device.parts if can_lift(of.layout, part)}
        part = [one for one in device.parts if one.host is not None][-1]
        task = of.off(part.key)
        found = choose(of.graph, 1 << task) if task is not None else None
        truth = least(device, part.key, liftable)
        if (found.cost if found else None) != truth:
            wrong[seed] = (found.cost if found else None, truth)
        assert found is None or found.exact
    assert not wrong
