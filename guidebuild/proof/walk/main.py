"""The main way: every stage but the remedies, in document order, and the rest of it from any step."""

from collections.abc import Iterable
from dataclasses import dataclass, field

from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Step
from guidebuild.proof.cells import Value
from guidebuild.proof.ending.goal import LOOKED_AT
from guidebuild.proof.needs.reach import hidden
from guidebuild.proof.scene import Scene
from guidebuild.proof.walk.record import Record
from guidebuild.proof.walk.stepping import Stepping


@dataclass(slots=True)
class MainWay:
    """`entered`: the values with which the main way comes to each step, shown or not.

    `in_reach`: for each part that the goal is about, where it is not hidden at the end of some step.
    """

    steps: tuple[tuple[Stage, Step], ...]
    entered: dict[str, dict[str, Value]] = field(default_factory=dict)
    in_reach: dict[str, int] = field(default_factory=dict)


def main_way(stages: Iterable[Stage]) -> MainWay:
    """The steps of the main way, not walked yet."""
    return MainWay(
        tuple((stage, step) for stage in stages if stage.remedy is None for step in stage.steps)
    )


def walk_main(way: MainWay, scene: Scene, stepping: Stepping, record: Record) -> None:
    """From the first step to the last, in every configuration."""
    goal = scene.bench.guide.goal.verb
    looked_at = scene.bench.goal if goal in LOOKED_AT else ()
    for stage, step in way.steps:
        way.entered[step.id] = scene.keep()
        _step(scene, stepping, stage, step, scene.everywhere, record)
        for key in looked_at:
            _look(way, scene, key, record.passages[-1].shown)


def _look(way: MainWay, scene: Scene, key: str, shown: int) -> None:
    """A part that the goal is about comes into reach where nothing hides it now."""
    before = way.in_reach.get(key, 0)
    out = scene.without(shown, before)
    if out:
        for bits in hidden(scene, key, out).values():
            out = scene.without(out, bits)
        way.in_reach[key] = before | out


def walk_rest(
    way: MainWay, scene: Scene, stepping: Stepping, record: Record, start: str, where: int
) -> None:
    """From the step `start` to the last, in some configurations."""
    begun = False
    for stage, step in way.steps:
        begun = begun or step.id == start
        if begun:
            _step(scene, stepping, stage, step, where, record)


def _step(
    scene: Scene, stepping: Stepping, stage: Stage, step: Step, where: int, record: Record
) -> None:
    configurations = scene.configurations
    reach = configurations.both(where, configurations.bits(stage.when))
    stepping.walk(scene, stage, step, reach, record)
