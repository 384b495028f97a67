"""What the cheapest order costs: 60 moves with up to six tools, against networkx's topological sort of the same graph.

Run it: `python -m tests.bench.plan [GRAPHS]` (usual: 200). All times are of one run; only their ratio means anything.
The topological sort finds any order; the planner the one with the fewest changes of tool, with a bound.
"""

import random
import sys
from collections.abc import Callable
from functools import partial
from statistics import median
from time import perf_counter
from typing import TypeVar

import networkx

from guidebuild.plan.choose import choose
from guidebuild.plan.graph import Graph, Task, numbers

T = TypeVar("T")
MOVES, TOOLS = 60, 6
LIMIT = 600.0  # times networkx's sort, at worst
TIMES = 5  # each is measured so often; the shortest counts, as other work on the machine only adds


def moves(seed: int) -> Graph:
    """A random precedence graph as devices have them: most moves need one or two earlier ones, a third is by hand."""
    dice = random.Random(seed)
    tools = [f"t{number}" for number in range(dice.randint(2, TOOLS))]
    tasks = []
    for number in range(MOVES):
        before = range(max(0, number - 20), number)
        some = dice.sample(before, min(len(before), dice.choice((0, 1, 1, 2))))
        tool = dice.choice(tools) if dice.random() < 0.67 else None
        tasks.append(Task(str(number), tuple(1 << one for one in some), tool, int(tool is None)))
    return Graph(tuple(tasks))


def as_networkx(graph: Graph) -> "networkx.DiGraph[int]":
    """The same arcs."""
    found: networkx.DiGraph[int] = networkx.DiGraph()
    found.add_nodes_from(range(len(graph.tasks)))
    for number, task in enumerate(graph.tasks):
        found.add_edges_from((one, number) for need in task.needs for one in numbers(need))
    return found


def shortest(work: Callable[[], T]) -> tuple[float, T]:
    """The least of several measured times, in seconds, and what the work gave."""
    times = []
    for _ in range(TIMES):
        begun = perf_counter()
        given = work()
        times.append(perf_counter() - begun)
    return min(times), given


def ratios(count: int) -> None:
    """The middle and the worst ratio, and how far the orders are from the bound."""
    found, off = [], []
    for seed in range(count):
        graph = moves(seed)
        other = as_networkx(graph)
        ours, chosen = shortest(partial(choose, graph, graph.all))
        theirs, order = shortest(lambda: list(networkx.topological_sort(other)))  # noqa: B023
        assert chosen is not None
        assert len(order) == MOVES
        found.append(ours / theirs)
        off.append(chosen.cost - chosen.bound)
    print(f"{count} graphs of {MOVES} moves, 2 to {TOOLS} tools")
    print(
        f"time, planner / topological sort: middle {median(found):.0f}, worst {max(found):.0f} (limit {LIMIT:.0f})"
    )
    print(
        f"cost above the bound: {sum(1 for one in off if one)} of {count} not exact, at most {max(off)}"
    )


if __name__ == "__main__":
    ratios(int(sys.argv[1]) if len(sys.argv) > 1 else 200)
