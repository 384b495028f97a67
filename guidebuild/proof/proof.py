"""What the walk showed, and the questions that rules, drawings and outputs may ask of it."""

from collections.abc import Mapping
from dataclasses import dataclass

from guidebuild.device.record import Device
from guidebuild.device.states import State
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.guide import Guide
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Method, Step
from guidebuild.proof.mistake import Ending, Move, Parting, Unmet

Value = State | Mapping[State, int]  # one set of states everywhere, or {set: configurations}


@dataclass(frozen=True, slots=True)
class Snapshot:
    """The state of everything at one moment, in every configuration."""

    values: Mapping[str, Value]
    everywhere: int  # bits of all configurations that reach this moment

    def cells(self, key: str) -> tuple[tuple[State, int], ...]:
        """The thing's sets of states with the configurations in which each is true."""
        raise NotImplementedError

    def surely(self, key: str, states: State) -> int:
        """Configurations in which the thing is in one of `states`, whatever was left open."""
        raise NotImplementedError

    def perhaps(self, key: str, states: State) -> int:
        """Configurations in which the thing may be in one of `states`."""
        raise NotImplementedError


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
    """A step as it was walked: the state before it and after it, and what was done in it, in order."""

    step: Step
    stage: Stage
    shown: int  # configurations in which the step is shown
    before: Snapshot
    after: Snapshot
    walked: tuple[Walked, ...]


@dataclass(frozen=True, slots=True)
class Proof:
    """The one value that rules read. Pure: nothing here touches a disk."""

    guide: Guide
    device: Device
    configurations: Configurations
    passages: tuple[Passage, ...]  # in document order, remedies where they stand
    unmet: tuple[Unmet, ...]
    partings: tuple[Parting, ...]
    endings: tuple[Ending, ...]
    start: Snapshot
    end: Snapshot
