"""A precedence graph with alternatives: each task needs, for each of several reasons, one of some tasks first.

A set of tasks is an integer, one bit each. What is done stays done, so needs only ever become met: an order
that is feasible stays so when a task that is free already is done earlier.
"""

from collections.abc import Iterator
from dataclasses import dataclass

Tasks = int  # a set of task numbers, as bits


@dataclass(frozen=True, slots=True)
class Task:
    """`needs`: of each set one task must be done before; an empty set can never be met.

    `tool` is what the hand holds for it (None: by hand, which neither changes nor lays down the tool); `cost`
    counts what it takes besides a change of tool: 1 for a part that comes off.
    """

    name: str
    needs: tuple[Tasks, ...] = ()
    tool: str | None = None
    cost: int = 0


@dataclass(frozen=True, slots=True)
class Graph:
    """The tasks by number."""

    tasks: tuple[Task, ...]

    @property
    def all(self) -> Tasks:
        """Every task."""
        return (1 << len(self.tasks)) - 1

    def is_free(self, number: int, done: Tasks) -> bool:
        """Whether all that a task needs is done."""
        return all(need & done for need in self.tasks[number].needs)

    def free(self, done: Tasks, among: Tasks) -> Iterator[int]:
        """The tasks of `among` that are not done and could be done next, in order."""
        return (one for one in numbers(among & ~done) if self.is_free(one, done))

    def reachable(self, among: Tasks, done: Tasks = 0) -> Tasks:
        """All that can ever be done with the tasks of `among` only."""
        waiting = [(1 << one, self.tasks[one].needs) for one in numbers(among & ~done)]
        grown = True
        while grown:
            stuck = []
            for bit, needs in waiting:
                for need in needs:
                    if not need & done:
                        stuck.append((bit, needs))
                        break
                else:
                    done |= bit
            grown = len(stuck) < len(waiting)
            waiting = stuck
        return done


def numbers(tasks: Tasks) -> Iterator[int]:
    """The members of a set, lowest first."""
    while tasks:
        low = tasks & -tasks
        yield low.bit_length() - 1
        tasks ^= low


def bits(members: "Iterator[int] | list[int] | tuple[int, ...]") -> Tasks:
    """A set of its members."""
    found = 0
    for one in members:
        found |= 1 << one
    return found
