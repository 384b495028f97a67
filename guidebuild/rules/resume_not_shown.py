"""A remedy sends the reader to a step that is not shown in this unit.

The page has no such step: the reader stands before a mended device and does not know where to go
on.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = 'the remedy goes on at "{step}", which is not shown here'

HELP = "resume at a step that every unit sees which can come here"


def check(proof: Proof) -> Iterator[Hit]:
    shown = {passage.step.id: passage for passage in proof.passages}
    comes: dict[str, int] = {}
    for entry in proof.entries:
        comes[entry.remedy.id] = comes.get(entry.remedy.id, 0) | entry.where
    for stage in proof.guide.stages:
        resume = stage.remedy.resume if stage.remedy else None
        target = shown.get(resume.text) if resume else None
        if resume is None or target is None:
            continue
        where = comes.get(stage.id, 0)
        lost = where ^ (where & target.shown)
        if lost:
            related = (Related(target.step.span, "this is the step"),)
            yield Hit(resume.span, {"step": target.step.title.text}, related, lost, where)
