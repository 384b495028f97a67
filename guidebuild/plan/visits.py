"""How often each tool must be taken up at least for what is left: a bound for the search for the cheapest order.

Along a chain of tasks, each needing the one before, a tool is taken up once for each run of its tasks; work by hand
does not end a run, another tool does. As all that follows on a task that is left is left too, what a chain asks
for can be told beforehand for the task at its head. Batches are of one tool each, so the bounds of tools add up.
"""

from collections.abc import Sequence

from guidebuild.plan.graph import Graph, Tasks


class Visits:
    """Made once a search, for the tasks that it has to bring into an order."""

    def __init__(self, graph: Graph, wanted: Tasks, done: Tasks) -> None:
        self.graph = graph
        order = _order(graph, wanted, done)
        after = _followers(graph, order, wanted, done)
        tools = dict.fromkeys(graph.tasks[one].tool for one in order)
        self._levels = [
            _levels(_heads(graph, order, after, tool)) for tool in tools if tool is not None
        ]

    def least(self, left: Tasks) -> int:
        """Batches that no order of these can do without."""
        found = 0
        for levels in self._levels:
            for number, heads in levels:
                if heads & left:
                    found += number
                    break
        return found


def _order(graph: Graph, wanted: Tasks, done: Tasks) -> list[int]:
    """Some order in which all can be done."""
    found: list[int] = []
    while more := list(graph.free(done, wanted)):
        found += more
        done |= sum(1 << one for one in more)
    return found


def _followers(
    graph: Graph, order: Sequence[int], wanted: Tasks, done: Tasks
) -> dict[int, list[int]]:
    """By task: those that surely come after it. Where a need has alternatives, nothing is sure."""
    found: dict[int, list[int]] = {one: [] for one in order}
    for one in order:
        for need in graph.tasks[one].needs:
            ways = need & wanted
            if not need & done and ways.bit_count() == 1:
                found[ways.bit_length() - 1].append(one)
    return found


def _heads(
    graph: Graph, order: Sequence[int], after: dict[int, list[int]], tool: str
) -> dict[int, int]:
    """By task: how often a chain that begins there takes the tool up."""
    fresh: dict[int, int] = {}  # the tool lies on the bench
    held: dict[int, int] = {}  # a run of it goes on
    for one in reversed(order):
        then_fresh = max((fresh[next_] for next_ in after[one]), default=0)
        then_held = max((held[next_] for next_ in after[one]), default=0)
        mine = graph.tasks[one].tool
        if mine == tool:
            fresh[one], held[one] = 1 + then_held, then_held
        elif mine is None:
            fresh[one], held[one] = then_fresh, then_held
        else:
            fresh[one] = held[one] = then_fresh
    return fresh


def _levels(heads: dict[int, int]) -> list[tuple[int, Tasks]]:
    """Each number of times with the tasks that ask for it, the greatest first."""
    found: dict[int, Tasks] = {}
    for one, number in heads.items():
        if number:
            found[number] = found.get(number, 0) | 1 << one
    return sorted(found.items(), reverse=True)
