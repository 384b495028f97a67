"""What one walk writes down as it goes."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import TypeAlias

from guidebuild.device.states import State
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Step
from guidebuild.proof.asking import Lack
from guidebuild.proof.cells import Value
from guidebuild.proof.done import Done
from guidebuild.proof.mistake import Need, Parting, Unmet, union
from guidebuild.proof.proof import Passage
from guidebuild.proof.scene import History, Scene

Cells: TypeAlias = Sequence[tuple[int, int]]  # sets of states, each with where it is true


@dataclass(frozen=True, slots=True)
class Moment:
    """A check as it was met: after its own needs, with the values of then and what was worked by then."""

    check: Check
    step: Step
    where: int
    values: dict[str, Value]
    past: History
    worked: int
    spare: int

    def history(self) -> History:
        """What was worked by then, to be gone on with."""
        return History(self.past.worked[: self.worked], self.past.spare[: self.spare])


def moment(scene: Scene, check: Check, step: Step, where: int) -> Moment:
    """This moment of a scene."""
    past = scene.history
    return Moment(check, step, where, scene.keep(), past, len(past.worked), len(past.spare))


@dataclass(slots=True)
class Record:
    """`entered_from`: the check whose remedy is walked; `after`: the remedy after which the rest is."""

    entered_from: Check | None = None
    after: Stage | None = None
    unmet: list[Unmet] = field(default_factory=list)
    partings: list[Parting] = field(default_factory=list)
    passages: list[Passage] = field(default_factory=list)
    moments: list[Moment] = field(default_factory=list)
    done: list[Done] = field(default_factory=list)  # in the step in hand

    def lacks(self, need: Need, work: Done, thing: str, found: Cells, lack: Lack) -> None:
        """A need surely fails."""
        self.unmet.append(
            Unmet(
                need=need,
                doing=work.doing,
                thing=thing,
                found=union(State(cell) for cell, _ in found),
                blames=tuple(lack.blames),
                where=lack.where,
                step=work.around.step,
                span=work.span,
                entered_from=self.entered_from,
                after=self.after,
                blamed_in=tuple(lack.blames.values()),
                found_in=tuple((State(cell), bits) for cell, bits in found),
            )
        )
