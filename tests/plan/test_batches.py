"""The fewest changes of tool, against every order there is; and the bound, which is never more than what it takes."""

import random
from functools import cache

import pytest

from guidebuild.plan.graph import Graph, Task, Tasks, bits
from guidebuild.plan.order import batches
from guidebuild.plan.visits import Visits

MOVES, TOOLS = 11, 4


def dealt(seed: int) -> Graph:
    """Eleven moves with up to four tools; a few needs have an alternative."""
    dice = random.Random(seed)
    tools = [None, *(f"t{number}" for number in range(dice.randint(2, TOOLS)))]
    tasks = []
    for number in range(MOVES):
        needs = []
        for _ in range(dice.choice((0, 1, 1, 2)) if number else 0):
            ways = dice.sample(range(number), min(number, dice.choice((1, 1, 1, 2))))
            needs.append(bits(ways))
        tasks.append(Task(str(number), tuple(needs), dice.choice(tools)))
    return Graph(tuple(tasks))


def fewest(graph: Graph, done: Tasks = 0) -> int:
    """Batches of one tool each that all of it takes at least: every order is looked at."""

    @cache
    def left(done: Tasks, tool: str | None) -> int:
        if not graph.all & ~done:
            return 0
        found = []
        for one in graph.free(done, graph.all):
            mine = graph.tasks[one].tool
            taken_up = mine is not None and mine != tool
            found.append(taken_up + left(done | 1 << one, mine or tool))
        return min(found)

    return left(done, None)


@pytest.mark.parametrize("tenth", range(5))
def test_no_order_has_fewer_changes(tenth: int) -> None:
    for seed in range(tenth, 250, 5):
        graph = dealt(seed)
        found = batches(graph, graph.all)
        assert found is not None
        assert found.exact
        assert found.changes == max(0, fewest(graph) - 1), seed


def test_the_bound_is_never_more_than_what_it_takes() -> None:
    sharp = 0
    for seed in range(100):
        graph = dealt(seed)
        least = Visits(graph, graph.all, 0).least(graph.all)
        assert least <= fewest(graph), seed
        sharp += least == fewest(graph)
    assert sharp > 50


def test_a_tool_that_is_needed_before_and_after_another_is_counted_twice() -> None:
    tools = ("a", None, "a", "b", None, "a")
    chain = Graph(
        tuple(Task(str(n), (1 << n - 1,) if n else (), tool) for n, tool in enumerate(tools))
    )
    visits = Visits(chain, chain.all, 0)
    assert visits.least(chain.all) == 3
    assert visits.least(chain.all & ~0b111) == 2
    assert visits.least(1 << 5) == 1
