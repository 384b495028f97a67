"""A caution stands after the act that it is for.

It is read with the burnt finger. A caution stands in its step before the first act to which it
applies; one of the guide's own words, of which nobody can know the act, must at least have
something after it.

Source: MIL-STD-2106A(SH) App. B, warnings and cautions "shall precede the step or steps to which
they apply"; S1000D 5.0 `proced.xsd`, a warning after the text of a step is invalid; both read in
the documents themselves.
"""

from collections.abc import Iterator

from guidebuild.device.record import Hazard
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.inside import cautions, items, steps_with
from guidebuild.guide.prose import Paragraph
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Item, Step
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.cautioned import keys_of, targets, tells
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.SAFETY)

MESSAGE = "this caution comes after the act that it is for"

HELP = "move it up, before the first act that it is about"


def check(proof: Proof) -> Iterator[Hit]:
    for passage in proof.passages if steps_with(proof.guide, Caution) else ():
        flow = list(items(passage.step))
        for number, item in enumerate(flow):
            if isinstance(item, Caution):
                act = _too_late_for(proof, passage.stage, passage.step, flow, number, item)
                if act is not None:
                    related = (Related(act.verb_span, "this is the act"),)
                    yield Hit(item.span, {}, related, None)


def _too_late_for(
    proof: Proof, stage: Stage, step: Step, flow: list[Item], number: int, caution: Caution
) -> Act | None:
    """The act before it, where it is about that act, and was not told before."""
    earlier = [item for item in flow[:number] if isinstance(item, Act)]
    if not caution.hazards:
        nothing_more = not any(
            isinstance(item, Act | Check | Paragraph) for item in flow[number + 1 :]
        )
        return earlier[-1] if earlier and nothing_more else None
    for said in caution.hazards:
        hazard = proof.device.hazards.get(said.text)
        if hazard is None or _told_before(stage, step, hazard, caution):
            continue
        keys = keys_of(proof.device, hazard)
        for act in earlier:
            if keys & targets(proof.device, act):
                return act
    return None


def _told_before(stage: Stage, step: Step, hazard: Hazard, caution: Caution) -> bool:
    """Whether an earlier caution of the stage tells of the hazard; then this one only says it again."""
    for one in stage.steps:
        for other in cautions(one):
            if other is caution:
                return False
            if tells(other, hazard):
                return True
    return False
