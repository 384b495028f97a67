"""A device as a precedence graph: each opening a task, each reason a need."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import cached_property

from guidebuild.device.acts import Verb
from guidebuild.device.layout import Layout
from guidebuild.device.states import Kind
from guidebuild.device.things import Hole
from guidebuild.plan.graph import Graph, Task, Tasks, bits
from guidebuild.plan.needs import Reason, at_hand, reasons
from guidebuild.plan.openings import Opening, openings


@dataclass(frozen=True, slots=True)
class Need:
    """One of `tasks` first, in the configurations `where`."""

    tasks: Tasks
    where: int
    why: str = ""


Needs = tuple[tuple[Need, ...], ...]  # by task


class Bench:
    """Made once a record and its configurations. Task numbers count `openings`, in the record's order."""

    def __init__(self, layout: Layout) -> None:
        self.layout = layout
        self.openings = tuple(_joined(layout))

    @cached_property
    def needs(self) -> Needs:
        """By task: what it needs."""
        return tuple(tuple(self._needs(reasons(self.layout, one))) for one in self.openings)

    @cached_property
    def graph(self) -> Graph:
        """The openings as tasks. Only a part that comes off costs, and only once."""
        return self.with_needs(self.needs)

    def with_needs(self, needs: Iterable[Iterable[Need]]) -> Graph:
        """The same tasks with other needs."""
        return Graph(
            tuple(
                Task(one.name, tuple(need.tasks for need in each), one.tool, self._cost(one))
                for one, each in zip(self.openings, needs, strict=True)
            )
        )

    def off(self, part: str) -> int | None:
        """The task that takes a part off; None where it is off from the start."""
        return self._first(part, (Verb.REMOVE,))

    def opens(self, key: str) -> int | None:
        """The task that opens a thing; of a part that can be lifted, lifting. None: open from the start."""
        return self._by_key.get(key, (None,))[0]

    def at_hand(self, key: str) -> tuple[Need, ...]:
        """What must be open before a thing can be worked at all."""
        return tuple(self._needs(at_hand(self.layout, key)))

    def numbered(self, keys: Iterable[str]) -> Tasks:
        """The tasks that open these things."""
        return bits([task for key in keys for task in self._by_key.get(key, ())[:1]])

    @cached_property
    def _by_key(self) -> dict[str, tuple[int, ...]]:
        found: dict[str, tuple[int, ...]] = {}
        for number, one in enumerate(self.openings):
            for key in one.keys:
                found[key] = (*found.get(key, ()), number)
        return found

    def _first(self, key: str, verbs: tuple[Verb, ...]) -> int | None:
        tasks = self._by_key.get(key, ())
        return next((one for one in tasks if self.openings[one].verb in verbs), None)

    def _needs(self, all_of: Iterable[Reason]) -> Iterator[Need]:
        """A reason that something open from the start meets is none."""
        for reason in all_of:
            tasks = self.numbered(reason.any_of)
            if reason.where and all(key in self._by_key for key in reason.any_of):
                yield Need(tasks, reason.where, reason.why)

    def _cost(self, opening: Opening) -> int:
        if self.layout.device.things[opening.keys[0]].kind is not Kind.PART:
            return 0
        lifted = self._by_key[opening.keys[0]]
        return 1 if opening is self.openings[lifted[0]] else 0


def _joined(layout: Layout) -> Iterator[Opening]:
    """Screws of one group that are turned with the same tool for the same reasons are one opening."""
    groups: dict[object, list[Opening]] = {}
    for one in openings(layout):
        thing = layout.device.things[one.keys[0]]
        slot: object = one.keys
        if isinstance(thing, Hole):
            slot = thing.group, one.verb, one.tool, one.where, tuple(reasons(layout, one))
        groups.setdefault(slot if isinstance(thing, Hole) else (one.keys, one.verb), []).append(one)
    for several in groups.values():
        yield replace(several[0], keys=tuple(key for one in several for key in one.keys))
