"""Which tasks a target takes, where there is a choice: the set whose cheapest order is cheapest of all.

A cover hides a screw until it is off, or until the unit that the screw is in has been taken out from under it.
Sets are grown from the target by one alternative at a time, the cheapest first; what a set costs at least (its
parts, and a change for each further tool) only grows with it, so the search stops as soon as nothing that is
left can be cheaper than what was found.
"""

from dataclasses import dataclass, replace
from functools import reduce
from heapq import heappop, heappush
from operator import or_

from guidebuild.plan.graph import Graph, Tasks, numbers
from guidebuild.plan.order import LIMIT, Batches, batches

SETS = 5_000  # sets looked at; past that the best one found is told, with a bound


@dataclass(frozen=True, slots=True)
class Chosen:
    """What is done, in batches of one tool each. `cost`: parts and changes of tool; `bound`: the least possible."""

    tasks: Tasks
    batches: tuple[Tasks, ...]
    cost: int
    bound: int

    @property
    def exact(self) -> bool:
        """Whether it is surely a cheapest one."""
        return self.cost == self.bound


def choose(graph: Graph, wanted: Tasks, done: Tasks = 0, limit: int = LIMIT) -> Chosen | None:
    """The cheapest way to all of `wanted`; None where there is none. `done` was done before and costs nothing."""
    if wanted & ~graph.reachable(graph.all, done):
        return None
    slim = without_detours(graph, done)
    waiting = [_entry(slim, wanted & ~done)]
    seen: set[Tasks] = set()
    best: Chosen | None = None
    while waiting and (best is None or waiting[0][0] < best.cost):
        least, _, tasks = heappop(waiting)
        if tasks in seen:
            continue
        seen.add(tasks)
        if len(seen) > SETS and best is not None:
            return replace(best, bound=min(least, best.bound))
        further = _alternatives(slim, tasks, done)
        if further is None:
            best = _better(best, _settled(slim, tasks, done, limit))
            continue
        for one in numbers(further):
            heappush(waiting, _entry(slim, tasks | 1 << one))
    return best


def without_detours(graph: Graph, done: Tasks = 0) -> Graph:
    """Without alternatives that can't come first: those that need another of the same set, or the task itself."""
    return Graph(
        tuple(
            replace(task, needs=tuple(_slim(graph, number, need, done) for need in task.needs))
            for number, task in enumerate(graph.tasks)
        )
    )


def _slim(graph: Graph, number: int, need: Tasks, done: Tasks) -> Tasks:
    if need & done or need.bit_count() < 2:
        return need
    left = need
    for one in numbers(need):
        others = left & ~(1 << one) | 1 << number
        if not graph.reachable(graph.all & ~others, done) >> one & 1:
            left &= ~(1 << one)
    return left or need


def _alternatives(graph: Graph, tasks: Tasks, done: Tasks) -> Tasks | None:
    """What could be done besides to get on; None where nothing is missing."""
    for one in numbers(tasks):
        for need in graph.tasks[one].needs:
            if not need & (tasks | done):
                return need
    reached = graph.reachable(tasks, done)
    stuck = tasks & ~reached
    if not stuck:
        return None
    missing = (
        need & ~tasks
        for one in numbers(stuck)
        for need in graph.tasks[one].needs
        if not need & reached
    )
    return reduce(or_, missing, 0)


def _entry(graph: Graph, tasks: Tasks) -> tuple[int, int, Tasks]:
    members = [graph.tasks[one] for one in numbers(tasks)]
    tools = {task.tool for task in members if task.tool is not None}
    return sum(task.cost for task in members) + max(0, len(tools) - 1), len(members), tasks


def _settled(graph: Graph, tasks: Tasks, done: Tasks, limit: int) -> Chosen:
    found: Batches | None = batches(graph, tasks, done, limit)
    assert found is not None
    parts = sum(graph.tasks[one].cost for one in numbers(tasks))
    return Chosen(tasks, found.batches, parts + found.changes, parts + found.bound)


def _better(best: Chosen | None, other: Chosen) -> Chosen:
    """The cheaper; of two that cost the same the first. The bound is that of the least that was looked at."""
    if best is None:
        return other
    bound = min(best.bound, other.bound)
    return replace(best if best.cost <= other.cost else other, bound=bound)
