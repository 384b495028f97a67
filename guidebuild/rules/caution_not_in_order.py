"""Cautions that stand together are not in the order of their gravity.

The gravest comes first, because many read only the first. The order is danger, warning, caution,
notice.

Source: MIL-STD-38784 and S1000D 5.0 `proced.xsd` (in a step all warnings, then all cautions, then
notes); the latter read in the schema itself, the former from memory.
"""

from collections.abc import Iterator

from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.inside import items, steps_with
from guidebuild.guide.signal_words import LEVELS, gravity
from guidebuild.guide.step import Step
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.SAFETY)

MESSAGE = "{level} stands after {weaker}"

HELP = "put the graver one first"


def check(proof: Proof) -> Iterator[Hit]:
    for step in steps_with(proof.guide, Caution):
        for run in _runs(step):
            levels = [_gravity(proof, caution) for caution in run]
            if levels != sorted(levels):
                yield _hit(run, levels)


def _runs(step: Step) -> Iterator[list[Caution]]:
    """Cautions with nothing between them."""
    run: list[Caution] = []
    for item in (*items(step), None):
        if isinstance(item, Caution):
            run.append(item)
        else:
            if len(run) > 1:
                yield run
            run = []


def _gravity(proof: Proof, caution: Caution) -> int:
    hazards = (proof.device.hazards.get(said.text) for said in caution.hazards)
    levels = [hazard.level for hazard in hazards if hazard]
    levels += [caution.level.text] if caution.level else []
    return min((gravity(level) for level in levels), default=len(LEVELS))


def _hit(run: list[Caution], levels: list[int]) -> Hit:
    at = next(number for number in range(1, len(run)) if levels[number] < levels[number - 1])
    words = {"level": LEVELS[levels[at]], "weaker": [*LEVELS, "another"][levels[at - 1]]}
    sorted_run = [run[number] for number in sorted(range(len(run)), key=lambda one: levels[one])]
    edits = tuple(
        Edit(here.span, there.span.text)
        for here, there in zip(run, sorted_run, strict=True)
        if here is not there
    )
    related = (Related(run[at - 1].span, "this is the weaker one"),)
    return Hit(run[at].span, words, related, edits=edits)
