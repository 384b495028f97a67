"""The plan: every step with its time, its tools, and how many screws are out after it."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Protocol

from guidebuild.draw.squares import squares_svg
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.step import StepView
from guidebuild.outputs.html.page.when import When
from guidebuild.translate.messages.text import Text


class Staged(Protocol):
    """A stage, as far as the plan asks it."""

    @property
    def title(self) -> Text: ...
    @property
    def when(self) -> When | None: ...
    @property
    def steps(self) -> tuple[StepView, ...]: ...


@dataclass(frozen=True, slots=True)
class PlanRow:
    """A step in the plan; `out` of all screws lie on the tray after it, at most."""

    id: str
    number: str
    title: Text
    time: Text
    out: int
    squares: str
    tools: Text
    when: When | None


@dataclass(frozen=True, slots=True)
class PlanStage:
    """A stage with its rows."""

    title: Text
    when: When | None
    rows: tuple[PlanRow, ...]


def plan(reading: Reading, stages: Iterable[Staged]) -> tuple[PlanStage, ...]:
    """The stages of the main way."""
    total = len(reading.labels.loose)
    return tuple(
        PlanStage(stage.title, stage.when, tuple(_row(reading, s, total) for s in stage.steps))
        for stage in stages
    )


def _row(reading: Reading, step: StepView, total: int) -> PlanRow:
    out = max(held.count for held in step.tally.screws)
    title = reading.say.plain("plan.squares", count=out, total=total)
    svg = squares_svg(out, total, title) if total else ""
    return PlanRow(step.id, step.number, step.title, step.time, out, svg, step.tools, step.when)
