"""A condition asks for something that the reader can only see in a later step.

The answer lies under the cover, and the page asks for it while the cover is on. The reader guesses,
and a wrong guess leads through the wrong steps.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.condition import Condition, leaves
from guidebuild.guide.inside import conditions
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = '{option} can only be answered in the step "{step}", which comes later'

HELP = "move what depends on it behind that step, or name an earlier step in `seen-in`"


def check(proof: Proof) -> Iterator[Hit]:
    if all(option.seen_in is None for option in proof.guide.options):
        return
    order = {step.id: number for number, step in enumerate(proof.guide.steps)}
    seen = {
        option.id: order[option.seen_in.text]
        for option in proof.guide.options
        if option.seen_in is not None and option.seen_in.text in order
    }
    for stage in proof.guide.stages:
        if stage.remedy is None and stage.steps:
            yield from _early(proof, stage.when, order[stage.steps[0].id], seen)
            for step in stage.steps:
                yield from _early(proof, step.when, order[step.id], seen)
                for condition in conditions(step):
                    yield from _early(proof, condition, order[step.id] + 1, seen)


def _early(
    proof: Proof, condition: Condition | None, first: int, seen: dict[str, int]
) -> Iterator[Hit]:
    """Comparisons with what is only seen in step number `first` or later."""
    told: set[str] = set()
    for leaf in leaves(condition):
        number = seen.get(leaf.option)
        if number is not None and number >= first and leaf.option not in told:
            told.add(leaf.option)
            step = proof.guide.steps[number]
            related = (Related(step.span, "it is seen here"),)
            yield Hit(leaf.span, {"option": leaf.option, "step": step.title.text}, related)
