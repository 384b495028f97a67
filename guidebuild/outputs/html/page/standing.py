"""Standing cautions: the record's hazards that this guide meets again and again, or that can maim."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.guide.inside import cautions
from guidebuild.guide.signal_words import gravity
from guidebuild.outputs.html.page.cautions import Panel, hazard_panel
from guidebuild.outputs.html.page.reading import Reading


@dataclass(frozen=True, slots=True)
class Standing:
    """A hazard and the steps (id, number) that it belongs to."""

    panel: Panel
    steps: tuple[tuple[str, str], ...]


def standing(reading: Reading) -> tuple[Standing, ...]:
    """The gravest first."""
    found = sorted(_found(reading), key=lambda one: gravity(one.panel.level))
    return tuple(found)


def _found(reading: Reading) -> Iterator[Standing]:
    for id, hazard in reading.device.hazards.items():
        steps = {
            step.id: None
            for step in reading.guide.steps
            for caution in cautions(step)
            if id in {said.text for said in caution.hazards}
        }
        if len(steps) > 1 or (steps and gravity(hazard.level) < 2):
            numbered = tuple((step, reading.numbers.steps[step]) for step in steps)
            yield Standing(hazard_panel(reading, hazard), numbered)
