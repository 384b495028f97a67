"""A remedy sends the reader to a step that is not shown in this unit.

The page has no such step: the reader stands before a mended device and does not know where to go
on.

Source: common practice, no source.
"""

from collections.abc import Iterator
from functools import reduce
from operator import or_

from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = 'the remedy goes on at "{step}", which is not shown here'

HELP = "resume at a step that every unit sees which can come here"


def check(proof: Proof) -> Iterator[Hit]:
    shown = {passage.step.id: passage for passage in proof.passages}
    for stage in proof.guide.stages:
        resume = stage.remedy.resume if stage.remedy else None
        if resume is None or resume.text not in shown:
            continue
        target = shown[resume.text]
        comes = reduce(or_, (one.shown for one in proof.passages if one.stage is stage), 0)
        lost = comes ^ (comes & target.shown)
        if lost:
            related = (Related(target.step.span, "this is the step"),)
            yield Hit(resume.span, {"step": target.step.title.text}, related, lost, comes)
