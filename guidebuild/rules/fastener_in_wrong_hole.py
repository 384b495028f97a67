"""A screw goes into a hole that takes another one.

The guide says with `screw-from` that a screw from one hole goes into another, and the record says
that the two differ. Too long, it goes through what lies below; too short, it strips the thread;
with another head it stands proud.

Source: common practice, no source.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import reduce
from operator import and_, or_

from guidebuild.device.naming import called, subject
from guidebuild.device.things import Hole
from guidebuild.guide.blocks.fastener import FastenerAct
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.alike import screws_going_in, where_another
from guidebuild.proof.questions.cases import values
from guidebuild.proof.questions.history import place
from guidebuild.proof.questions.joined import shown
from guidebuild.source.finding import Category, Related
from guidebuild.source.span import Span

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {gets} the screw of {other} ({its})"

HELP = "put each screw back in its own hole; if they are the same, correct `screw` in the record"


@dataclass(frozen=True, slots=True)
class Mixed:
    """A screw of `source` goes into `hole`, which takes another, in `where`."""

    hole: Hole
    source: Hole
    move: Move
    where: int


def check(proof: Proof) -> Iterator[Hit]:
    """Screws that were swapped in one block are one mistake, told at the first."""
    groups: dict[Span, list[Mixed]] = {}
    for hole, move, one in screws_going_in(proof):
        sources = _sources(proof, move)
        if not sources:
            continue
        wrong = [where_another(proof, hole, source, one.where) for source in sources]
        where = reduce(and_, wrong)
        if where:
            groups.setdefault(move.act.block, []).append(Mixed(hole, sources[0], move, where))
    for group in groups.values():
        yield _hit(proof, group)


def _sources(proof: Proof, move: Move) -> list[Hole]:
    """The holes from which its screw may be; without `screw-from` it is the hole's own."""
    if not isinstance(move.act, FastenerAct) or move.act.screw_from is None:
        return []
    keys = proof.device.names.get(move.act.screw_from.text, ())
    sources = (proof.device.things[key] for key in keys)
    return [source for source in sources if isinstance(source, Hole)]


def _hit(proof: Proof, group: list[Mixed]) -> Hit:
    first = group[0]
    at = place(first.move)
    alike = [one for one in group if place(one.move) == at]
    words = subject(proof.device, [one.hole.key for one in alike])
    words["gets"] = "gets" if words["is"] == "is" else "get"
    screws = values(proof, first.source.screw, first.where)
    words |= {"other": first.source.id, "its": next((one.text for one, _ in screws), "")}
    others = {place(one.move): one for one in group if place(one.move) != at}
    related = (
        Related(first.hole.span, "the record tells here what this hole takes"),
        *(
            Related(span, f"{called(proof.device, one.hole.key)} too")
            for span, one in others.items()
        ),
    )
    where = reduce(or_, (one.where for one in group))
    return Hit(at, words, related, where, shown(proof, first.move.step))
