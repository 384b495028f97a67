"""How many states a device passes through, and in how many orders it comes apart.

Both are counted over the reachable states (the down-sets, where there are no alternatives), never over the
orders: ten parts have 48,384 orders and 265 states.
"""

from guidebuild.plan.graph import Graph, Tasks


def states(graph: Graph, among: Tasks) -> dict[Tasks, int]:
    """Every state that the tasks of `among` lead to, with the number of orders that lead there."""
    layer, found = {0: 1}, {0: 1}
    while layer:
        after: dict[Tasks, int] = {}
        for done, ways in layer.items():
            for one in graph.free(done, among):
                more = done | 1 << one
                after[more] = after.get(more, 0) + ways
        found.update(after)
        layer = after
    return found


def orders(graph: Graph, among: Tasks) -> int:
    """In how many orders all of `among` can be done; 0 where it can't."""
    return states(graph, among).get(among, 0)
