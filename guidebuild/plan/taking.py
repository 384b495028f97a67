"""Taking apart for one or several targets: what, in which order, in which configurations, at what cost."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from guidebuild.plan.bench import Bench, Needs
from guidebuild.plan.choose import choose
from guidebuild.plan.graph import Tasks, bits, numbers
from guidebuild.plan.habits import always, with_habits
from guidebuild.plan.natural import natural
from guidebuild.plan.openings import Opening


@dataclass(frozen=True, slots=True)
class Taken:
    """One act, the number of its task, and the configurations in which it is needed."""

    task: int
    opening: Opening
    where: int


@dataclass(frozen=True, slots=True)
class Taking:
    """`cost`: parts that come off and changes of tool; `bound`: the least possible under the same habits."""

    acts: tuple[Taken, ...]
    cost: int
    bound: int
    needs: Needs

    @property
    def tasks(self) -> Tasks:
        """All tasks in it."""
        return bits([one.task for one in self.acts])


def take(
    bench: Bench, wanted: Sequence[int], done: Tasks = 0, *, habits: bool = True, early: Tasks = 0
) -> Taking | None:
    """The cheapest order to all wanted tasks; None where no order leads there.

    With `habits`, what a careful person holds to is kept besides: see `habits.py`.
    """
    needs = bench.needs
    goal = bits(list(wanted))
    if habits:
        goal |= always(bench)
        needs = with_habits(bench, goal, done, early)
    graph = bench.with_needs(needs)
    chosen = choose(graph, goal & ~done, done)
    if chosen is None:
        return None
    targets = [*numbers(always(bench) if habits else 0), *wanted]
    order = natural(graph, chosen.batches, targets, done)
    acts = tuple(_needed(bench, needs, order, goal, done))
    return Taking(acts, chosen.cost, chosen.bound, needs)


def _needed(
    bench: Bench, needs: Needs, order: Sequence[int], goal: Tasks, done: Tasks
) -> Iterable[Taken]:
    """In each configuration only what is needed there."""
    where = dict.fromkeys(order, 0)
    for number in range(bench.layout.everywhere.bit_length()):
        for task in numbers(_closure(bench, needs, order, goal, done, 1 << number)):
            where[task] |= 1 << number
    for task in order:
        if where[task]:
            yield Taken(task, bench.openings[task], where[task])


def _closure(
    bench: Bench, needs: Needs, order: Sequence[int], goal: Tasks, done: Tasks, here: int
) -> Tasks:
    """Back from the goal, in one configuration; of alternatives one that is needed anyhow, else the first done."""
    exists = [task for task in order if bench.openings[task].where & here]
    found = goal & bits(exists)
    for place in range(len(exists) - 1, -1, -1):
        earlier = exists[:place]
        for need in needs[exists[place]] if found >> exists[place] & 1 else ():
            ways = need.tasks & bits(earlier)
            if need.where & here and ways and not ways & found and not need.tasks & done:
                found |= 1 << next(one for one in earlier if ways >> one & 1)
    return found
