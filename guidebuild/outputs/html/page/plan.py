"""The plan: every step with its time, its tools, and how many screws are out after it."""

from collections.abc import Sequence
from dataclasses import dataclass

from guidebuild.draw.squares import squares_svg
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.step import StepView
from guidebuild.outputs.html.page.tally import loose_screws
from guidebuild.outputs.html.page.when import When
from guidebuild.translate.messages.text import Text


@dataclass(frozen=True, slots=True)
class PlanRow:
    """A step in the plan."""

    id: str
    number: str
    title: Text
    time: Text
    squares: str
    tools: Text
    when: When | None


def plan(reading: Reading, steps: Sequence[StepView]) -> tuple[PlanRow, ...]:
    """A row a step of the main way."""
    total = len(loose_screws(reading))
    return tuple(_row(reading, step, total) for step in steps)


def _row(reading: Reading, step: StepView, total: int) -> PlanRow:
    out = max(held.count for held in step.tally.screws)
    title = reading.say.plain("plan.squares", count=out, total=total)
    svg = squares_svg(out, total, title) if total else ""
    return PlanRow(step.id, step.number, step.title, step.time, svg, step.tools, step.when)
