"""The order of given tasks with the fewest changes of tool: exact, by dynamic programming over down-sets.

Whoever holds a tool does with it, and by hand, all that is free: what must be done anyhow costs nothing more
now, and no task is ever hindered by another that is done. So only the states in which the tool is changed need
be looked at; of these the ones with the fewest changes so far come first (Hart, Nilsson and Raphael 1968: no
state is looked at twice, and the first way to the end is a cheapest one, as what is left never takes fewer
changes than there are other tools).
"""

from dataclasses import dataclass
from heapq import heappop, heappush
from itertools import pairwise

from guidebuild.plan.graph import Graph, Tasks, numbers
from guidebuild.plan.visits import Visits

LIMIT = 100_000  # states looked at; past that the best order found so far is told, with a bound


@dataclass(frozen=True, slots=True)
class Batches:
    """What is done with each tool in turn. No order takes fewer than `bound` changes of tool."""

    batches: tuple[Tasks, ...]
    bound: int

    @property
    def changes(self) -> int:
        """Changes of tool; the first pick-up is none."""
        return max(0, len(self.batches) - 1)

    @property
    def exact(self) -> bool:
        """Whether it is surely a cheapest one."""
        return self.changes == self.bound


def batches(graph: Graph, wanted: Tasks, done: Tasks = 0, limit: int = LIMIT) -> Batches | None:
    """All of `wanted` in batches of one tool each; None where some can never be done."""
    if wanted & ~graph.reachable(wanted, done):
        return None
    return _Search(graph, wanted, done).run(limit)


class _Search:
    """States are (done, tool). The way to each is kept as the state before it."""

    def __init__(self, graph: Graph, wanted: Tasks, done: Tasks) -> None:
        self.graph = graph
        self.wanted = wanted & ~done
        self.done = done
        self.tools: dict[str, Tasks] = {}
        for one in numbers(self.wanted):
            tool = graph.tasks[one].tool
            if tool is not None:
                self.tools[tool] = self.tools.get(tool, 0) | 1 << one
        self.visits = Visits(graph, self.wanted, done)
        self.by_hand = self.wanted & ~sum(self.tools.values())

    def run(self, limit: int) -> Batches:
        start = self.graph.reachable(self.by_hand | self.done, self.done)
        before: dict[Tasks, tuple[Tasks | None, int]] = {start: (None, 0)}
        waiting = [(self._least(start), -start.bit_count(), start)]
        closed: list[tuple[Tasks, int]] = []
        bound = 0
        while waiting:
            least, _, done = heappop(waiting)
            bound = max(bound, least)
            if not self.wanted & ~done:
                return self._told(before, done, max(0, bound - 1))
            so_far = before[done][1]
            if any(done | other == other and steps <= so_far for other, steps in closed):
                continue  # another way has all this done, and perhaps more, with no more changes
            closed.append((done, so_far))
            if len(closed) > limit:
                return self._greedy(before, done, max(0, bound - 1))
            for after in self._next(done):
                steps = before[done][1] + 1
                if after not in before or steps < before[after][1]:
                    before[after] = (done, steps)
                    heappush(waiting, (steps + self._least(after), -after.bit_count(), after))
        raise AssertionError("all that is reachable was asked for")

    def _least(self, done: Tasks) -> int:
        return self.visits.least(self.wanted & ~done)

    def _next(self, done: Tasks) -> list[Tasks]:
        """After each tool with which anything can be done now."""
        found = []
        for tasks in self.tools.values():
            if not tasks & ~done:
                continue
            after = self.graph.reachable(tasks | self.by_hand | done, done)
            if after != done:
                found.append(after)
        return found

    def _greedy(
        self, before: dict[Tasks, tuple[Tasks | None, int]], done: Tasks, bound: int
    ) -> Batches:
        """On from here with the tool that gets furthest each time."""
        while self.wanted & ~done:
            after = max(self._next(done), key=lambda one: (one.bit_count(), -one))
            before[after] = (done, before[done][1] + 1)
            done = after
        return self._told(before, done, bound)

    def _told(
        self, before: dict[Tasks, tuple[Tasks | None, int]], done: Tasks, bound: int
    ) -> Batches:
        way = [done]
        while (earlier := before[way[-1]][0]) is not None:
            way.append(earlier)
        way.reverse()
        first = way[0] & ~self.done
        parts = [later & ~earlier for earlier, later in pairwise(way)]
        if parts:
            parts[0] |= first
        return Batches(tuple(parts) if parts else (first,) if first else (), bound)
