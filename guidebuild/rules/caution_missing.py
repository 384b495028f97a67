"""Something is handled that the record calls a hazard, and the guide does not say so.

The record holds the words once: what the hazard is, what it does, how to avoid it. The reader meets
it in this step and has read nothing. It is told in the step, or earlier in its stage; for putting
back, any earlier step of the main way will do.

Source: MIL-STD-2106A(SH) App. B, warnings and cautions "shall precede the step or steps to which
they apply"; read in the document itself.
"""

from collections.abc import Iterator

from guidebuild.device.naming import subject
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.cautioned import Handled, handled, told_where
from guidebuild.proof.questions.history import place
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Category, Related
from guidebuild.source.span import Span

RULE = Rule(category=Category.SAFETY)

MESSAGE = "{thing} {is} handled here, and nothing tells of the hazard {hazard}"

HELP = "put a caution before this act: `for: {hazard}`"


def check(proof: Proof) -> Iterator[Hit]:
    """A caution that is missing in a stage is told once, where it is missed first."""
    said: dict[tuple[str, str], int] = {}
    for one in handled(proof):
        slot = one.passage.stage.id, one.hazard.id
        told = told_where(proof, one) | said.get(slot, 0)
        where = one.where ^ (one.where & told)
        if where:
            said[slot] = said.get(slot, 0) | where
            yield _hit(proof, one, where)


def _hit(proof: Proof, one: Handled, where: int) -> Hit:
    block = one.move.act.block
    words = subject(proof.device, [one.move.thing]) | {"hazard": one.hazard.id}
    related = (Related(one.hazard.span, "the record tells of it here"),)
    inserted = Edit(
        Span(block.source, block.start, block.start), f"```caution\nfor: {one.hazard.id}\n```\n\n"
    )
    repeated = one.move.step.same_as is not None
    edits = () if repeated else (inserted,)
    return Hit(place(one.move), words, related, where, one.passage.shown, edits)
