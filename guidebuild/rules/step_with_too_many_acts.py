"""A step has more acts than fit on one page beside its picture.

A reader who is called away finds the step again, not the line. A step is one piece of work that has
a state to come back to; what has more than twelve lines is two.

Source: twelve lines is our own figure, by what fits beside a drawing on A4; nuclear and naval
procedure guides ask for two or three related actions a step (from memory).
"""

from collections.abc import Iterator

from guidebuild.guide.blocks.act import Act
from guidebuild.guide.step import Fork, Item, Step
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "this step has {acts} acts"

HELP = "make two steps of it, each with a state that one can leave and come back to; at most {most}"

MOST = 12


def check(proof: Proof) -> Iterator[Hit]:
    for step in proof.guide.steps:
        acts = _acts(step)
        if acts > MOST:
            yield Hit(step.title.span, {"acts": acts, "most": MOST})


def _acts(step: Step) -> int:
    """Acts as lines on the page; of several methods only the longest is done."""
    count = 0
    for part in step.flow:
        if isinstance(part, Fork):
            count += max(sum(_is_act(item) for item in way.items) for way in part.methods)
        else:
            count += _is_act(part)
    return count


def _is_act(item: Item) -> bool:
    return isinstance(item, Act)
