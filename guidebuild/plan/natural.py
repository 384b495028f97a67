"""The tasks of each batch in the order in which a person thinks of them.

A batch may be done in many orders that cost the same. Of these the one is taken that follows the target down
into the device: what it needs first, in the record's order, and each thing right after what it was waiting for.
So a small change in the record moves few lines of a draft.
"""

from collections.abc import Iterable, Sequence

from guidebuild.plan.graph import Graph, Tasks, numbers


def natural(
    graph: Graph, parts: Sequence[Tasks], wanted: Sequence[int], done: Tasks = 0
) -> list[int]:
    """All tasks of the batches in one order that meets every need."""
    among = sum(parts)
    rank = {one: place for place, one in enumerate(_downwards(graph, wanted, among))}
    order: list[int] = []
    for batch in parts:
        waiting = sorted(numbers(batch), key=lambda one: rank[one])
        while waiting:
            one = next(one for one in waiting if graph.is_free(one, done))
            waiting.remove(one)
            order.append(one)
            done |= 1 << one
    return order


def _downwards(graph: Graph, wanted: Iterable[int], among: Tasks) -> list[int]:
    """Depth first: what a task needs, then the task. A record may be as deep as it likes: no recursion."""
    found: dict[int, None] = {}
    waiting: list[tuple[int, bool]] = [(one, False) for one in reversed(list(wanted))]
    entered: set[int] = set()
    while waiting:
        one, ready = waiting.pop()
        if ready:
            found.setdefault(one)
        elif one not in entered:
            entered.add(one)
            waiting.append((one, True))
            needs = [one for need in graph.tasks[one].needs for one in numbers(need & among)]
            waiting.extend((need, False) for need in reversed(needs))
    return [*found, *(one for one in numbers(among) if one not in found)]
