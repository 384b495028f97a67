"""After a remedy the procedure does not go on from where the remedy leads.

A remedy that takes the cover off and does not put it back sends the reader to a step that begins
with the cover on. From there each act is wrong, and it is the reader who must find out why, with a
device that already failed once.

Source: common practice, no source.
"""

from collections.abc import Iterator
from functools import reduce
from operator import or_

from guidebuild.device.naming import subject
from guidebuild.device.states import State, word_for
from guidebuild.guide.stage import Stage
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Ending, Parting, Unmet
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.joined import place_of
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "after this remedy {thing} {is} {state}, and the procedure can't go on from it"

HELP = "end the remedy in the state in which its `resume` step begins, or resume at an earlier step"


def check(proof: Proof) -> Iterator[Hit]:
    wrong: dict[str, list[Unmet | Ending | Parting]] = {}
    every: tuple[Unmet | Ending | Parting, ...] = (*proof.unmet, *proof.endings, *proof.partings)
    for one in every:
        if one.after is not None:
            wrong.setdefault(one.after.id, []).append(one)
    for group in wrong.values():
        if not _told_inside(proof, group[0].after):
            yield _hit(proof, group)


def _told_inside(proof: Proof, stage: Stage | None) -> bool:
    """Whether something is wrong in the remedy itself; then its end is not its own mistake."""
    inside = {step.id for step in stage.steps} if stage else set()
    return any(one.after is None and one.step.id in inside for one in proof.unmet)


def _hit(proof: Proof, group: list[Unmet | Ending | Parting]) -> Hit:
    first, stage = group[0], group[0].after
    assert stage is not None and stage.remedy is not None
    things, kind = proof.device.things, proof.device.things[first.thing].kind
    alike = [
        one.thing
        for one in group
        if _found(one) == _found(first) and things[one.thing].kind is kind
    ]
    state = word_for(kind, _found(first))
    words = subject(proof.device, alike) | {"state": state or "not as it must be"}
    related = tuple(
        Related(place_of(one), "this can't be done then") for one in group if isinstance(one, Unmet)
    )
    where = reduce(or_, (one.where for one in group))
    span = stage.remedy.resume.span if stage.remedy.resume else stage.remedy.span
    return Hit(span, words, tuple(dict.fromkeys(related))[:3], where)


def _found(one: Unmet | Ending | Parting) -> State:
    return one.first if isinstance(one, Parting) else one.found
