"""An act names something that this unit does not have, or that is not here yet.

The reader looks for a bracket that only revision B has, or for a part that is still on the old unit
or comes with a kit that was not opened. A group of screws means those that exist; a single one must
be there.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.naming import subject
from guidebuild.device.states import State
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.joined import Mistake, unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} {why}"

HELP = "give the act the `when:` under which {thing} exists, or bring it first"


def check(proof: Proof) -> Iterator[Hit]:
    """Several in one step are one mistake: the step has no `when:`. It is told at the first of them."""
    groups: dict[tuple[str, int, str], list[Mistake]] = {}
    for mistake in unmet(proof, Need.HERE):
        key = mistake.first.step.id, mistake.where, _why(proof, mistake)
        groups.setdefault(key, []).append(mistake)
    for (_, _, why), group in groups.items():
        words = subject(proof.device, [key for one in group for key in one.things])
        yield group[0].hit(proof, (), **words, why=why)


def _why(proof: Proof, mistake: Mistake) -> str:
    thing = proof.device.things[mistake.first.thing]
    if not proof.configurations.bits(thing.when) & mistake.where:
        return "not in this unit"
    if mistake.first.found == State.LEFT:
        return "still on the old unit"
    return "not here yet: nothing has brought it"
