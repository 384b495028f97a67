"""What the walk may find. Rules turn these into findings; nothing here knows a rule's name."""

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from enum import Enum

from guidebuild.device.acts import Verb
from guidebuild.device.states import State
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Fork, Step
from guidebuild.source.span import Span


def union(sets: Iterable[State]) -> State:
    """All the states of some sets."""
    found = State(0)
    for one in sets:
        found |= one
    return found


class Need(Enum):
    """What an act needs, in the order in which it is asked (design: the needs)."""

    HERE = "here"  # not in this configuration, or not brought yet, or left on the old unit
    STATE = "state"  # not in a state that the act starts from
    REACH = "reach"  # something it lies behind is fitted
    SAFE = "safe"  # a guard of it is in
    DEAD = "dead"  # a plug is fed, or power is on
    FREE = "free"  # a link still holds the part
    MET = "met"  # what it must meet is not there
    SHUT = "shut"  # a guard is closed while what it guards is open; filled while its drain is out
    DRAIN = "drain"  # emptied in vain: the drain is shut, or what fills it is still in
    BETWEEN = "between"  # renewed after its parts came together
    SOURCE = "source"  # switched on with no source mated
    POWERED = "powered"  # a powered check with power off
    CARRIED = "carried"  # a check of a function whose plug is open
    OLD_UNIT = "old-unit"  # a goal's new unit exchanged again while it is in the hand


@dataclass(frozen=True, slots=True)
class Move:
    """One act on one thing, after all shorthand was written out; the walk knows only these.

    `span` is the word that it comes from (the id in a list, in `undo`, in `do-up`). `thing` is a key of
    the device. `step` is where it is done (the step that repeats another by `same-as`, too).
    """

    verb: Verb
    thing: str
    act: Act
    step: Step
    span: Span = field(compare=False)


@dataclass(frozen=True, slots=True)
class Unmet:
    """A need that surely fails in the configurations `where` (bits).

    `blames`: keys of what stands in the way (the screw that holds, the cover that hides, the plug that
    feeds). `found`: the states in which `thing` surely was. `doing` is a Move, or a Check for POWERED and
    CARRIED. `entered_from`: the check whose remedy or resumed walk showed it; None on the main way.
    `after`: the remedy after whose end the rest was walked again, where only that walk shows it.
    `blamed_in`: for each of `blames`, where it is to blame; `found_in`: `found` taken apart by configurations.
    """

    need: Need
    doing: Move | Check
    thing: str
    found: State
    blames: tuple[str, ...]
    where: int
    step: Step
    span: Span = field(compare=False)
    entered_from: Check | None = None
    after: Stage | None = None
    blamed_in: tuple[int, ...] = ()
    found_in: tuple[tuple[State, int], ...] = ()

    def only(self, where: int) -> "Unmet":
        """The same in some of its configurations."""
        pairs = zip(self.blames, self.blamed_in, strict=True)
        blamed = [(key, bits & where) for key, bits in pairs if bits & where]
        found_in = tuple((states, bits & where) for states, bits in self.found_in if bits & where)
        return replace(
            self,
            where=self.where & where,
            blames=tuple(key for key, _ in blamed),
            blamed_in=tuple(bits for _, bits in blamed),
            found=union(states for states, _ in found_in),
            found_in=found_in,
        )


@dataclass(frozen=True, slots=True)
class Parting:
    """Two paths meet and `thing` surely differs: methods of a fork, or an optional step done and skipped.

    Where `first` equals `second`, the thing is a goal's part: one way ends with the old unit, one with the new.
    """

    thing: str
    first: State
    second: State
    where: int
    step: Step
    fork: Fork | None  # None: an optional step
    span: Span = field(compare=False)
    entered_from: Check | None = None
    after: Stage | None = None


@dataclass(frozen=True, slots=True)
class Ending:
    """At the end of the guide `thing` surely is not as it must be.

    `last`: the Move that took it last (None where none did); `because` tells the ends apart: `state`,
    `ends` (what the guide says of the end), `left-over` (the new unit brought its own, or its hole is gone),
    `packing`, `goal`, `lost` (on the old unit). `after` as in Unmet.
    """

    thing: str
    wanted: State
    found: State
    where: int
    because: str
    last: Move | None
    entered_from: Check | None = None
    after: Stage | None = None
