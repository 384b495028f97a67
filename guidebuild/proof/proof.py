"""What the walk showed, and the questions that rules, drawings and outputs may ask of it."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from guidebuild.device.layout import Layout
from guidebuild.device.record import Device
from guidebuild.device.states import State
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.guide import Guide
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Method, Step
from guidebuild.proof.mistake import Ending, Move, Parting, Unmet

# One set of states that is true everywhere, or {set: configurations}; a set is an integer of State bits.
Value: TypeAlias = int | Mapping[int, int]


@dataclass(frozen=True, slots=True)
class Snapshot:
    """The state of everything at one moment, in every configuration.

    `values` may hold more keys than the device has things (marks of the walk, with a space in them): ask by
    the device's keys. Cells may speak of configurations beyond `everywhere`; the methods below don't.
    """

    values: Mapping[str, Value]
    everywhere: int  # bits of all configurations that reach this moment

    def cells(self, key: str) -> tuple[tuple[State, int], ...]:
        """The thing's sets of states with the configurations in which each is true."""
        value = self.values[key]
        if isinstance(value, int):
            return ((State(value), self.everywhere),) if self.everywhere else ()
        inside = ((State(states), bits & self.everywhere) for states, bits in value.items())
        return tuple(cell for cell in inside if cell[1])

    def surely(self, key: str, states: State) -> int:
        """Configurations in which the thing is in one of `states`, whatever was left open."""
        value, other = self.values[key], ~int(states)  # plain integers: flags of an enum are slow
        if isinstance(value, int):
            return 0 if value & other else self.everywhere
        return self.everywhere & _union(bits for cell, bits in value.items() if not cell & other)

    def perhaps(self, key: str, states: State) -> int:
        """Configurations in which the thing may be in one of `states`."""
        value, some = self.values[key], int(states)
        if isinstance(value, int):
            return self.everywhere if value & some else 0
        return self.everywhere & _union(bits for cell, bits in value.items() if cell & some)


@dataclass(frozen=True, slots=True)
class Walked:
    """One Move or Check as it was met on the main way (or first way into a remedy).

    `method`: the one in which it is done; None where every way through the step meets it.
    """

    doing: Move | Check
    step: Step
    stage: Stage
    where: int  # configurations in which it is done
    before: Snapshot
    method: Method | None = None


@dataclass(frozen=True, slots=True)
class Passage:
    """A step as it was walked: the state before it and after it, and what was done in it, in order.

    A step of a remedy is told as the remedy was first entered in each configuration; of one that no check
    enters, `shown` is 0 and both snapshots are the device at the start.
    """

    step: Step
    stage: Stage
    shown: int  # configurations in which the step is shown
    before: Snapshot
    after: Snapshot
    walked: Sequence[Walked]


@dataclass(frozen=True, slots=True)
class Entry:
    """A check whose failing leads into a remedy, in `where`; `step` is the check's."""

    check: Check
    step: Step
    remedy: Stage
    where: int


@dataclass(frozen=True, slots=True)
class Proof:
    """The one value that rules read. Pure: nothing here touches a disk.

    `unmet`, `partings` and `endings` with `after` set are what the rest of the procedure showed after a
    remedy that did not end as the main way enters its `resume` step; the main way does not show them.
    """

    guide: Guide
    device: Device
    configurations: Configurations
    layout: Layout  # place, path, what hides, holds, guards, in these configurations
    passages: tuple[Passage, ...]  # in document order, remedies where they stand
    unmet: tuple[Unmet, ...]
    partings: tuple[Parting, ...]
    endings: tuple[Ending, ...]
    entries: tuple[Entry, ...]
    start: Snapshot
    end: Snapshot


def _union(all_bits: Iterable[int]) -> int:
    total = 0
    for bits in all_bits:
        total |= bits
    return total
