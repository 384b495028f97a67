"""Two ways through a step leave the device in different states.

After the step the guide goes on as if there had been one way. Whoever took the other finds a screw
that is still in, or looks for one that was never taken out. The same goes for an optional step,
done and skipped.

Source: common practice, no source.
"""

from collections.abc import Iterator
from functools import reduce
from operator import or_

from guidebuild.device.naming import subject
from guidebuild.device.states import State, word_for
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Parting
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.joined import shown
from guidebuild.source.finding import Category
from guidebuild.source.span import Span

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} {first} after {one}, and {second} after {other}"

HELP = "let every way end alike: move what differs out of the methods, or add it to the other one"


def check(proof: Proof) -> Iterator[Hit]:
    groups: dict[tuple[Span, State, State], list[Parting]] = {}
    for parting in (one for one in proof.partings if one.after is None):
        groups.setdefault((parting.span, parting.first, parting.second), []).append(parting)
    for group in groups.values():
        yield _hit(proof, group)


def _hit(proof: Proof, group: list[Parting]) -> Hit:
    parting = group[0]
    kind = proof.device.things[parting.thing].kind
    one, other = ("one method", "another") if parting.fork else ("the step", "skipping it")
    words = {
        **subject(proof.device, [one.thing for one in group]),
        "first": word_for(kind, parting.first),
        "second": word_for(kind, parting.second),
        "one": one,
        "other": other,
    }
    where = reduce(or_, (one.where for one in group))
    return Hit(parting.span, words, (), where, shown(proof, parting.step))
