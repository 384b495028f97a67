"""A screw goes into a hole that takes another one.

The guide says with `screw-from` that a screw from one hole goes into another, and the record says
that the two differ. Too long, it goes through what lies below; too short, it strips the thread;
with another head it stands proud.

Source: common practice, no source.
"""

from collections.abc import Iterator
from functools import reduce
from operator import and_, or_

from guidebuild.device.naming import subject
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


def check(proof: Proof) -> Iterator[Hit]:
    groups: dict[Span, list[tuple[Hole, Hole, Move, int]]] = {}
    for hole, move, one in screws_going_in(proof):
        sources = _sources(proof, move)
        wrong = [where_another(proof, hole, source, one.where) for source in sources]
        where = reduce(and_, wrong) if wrong else 0
        if where:
            groups.setdefault(place(move), []).append((hole, sources[0], move, where))
    for span, group in groups.items():
        yield _hit(proof, span, group)


def _sources(proof: Proof, move: Move) -> list[Hole]:
    """The holes from which its screw may be; without `screw-from` it is the hole's own."""
    if not isinstance(move.act, FastenerAct) or move.act.screw_from is None:
        return []
    keys = proof.device.names.get(move.act.screw_from.text, ())
    sources = (proof.device.things[key] for key in keys)
    return [source for source in sources if isinstance(source, Hole)]


def _hit(proof: Proof, span: Span, group: list[tuple[Hole, Hole, Move, int]]) -> Hit:
    hole, source, move, here = group[0]
    words = subject(proof.device, [found[0].key for found in group])
    words["gets"] = "gets" if words["is"] == "is" else "get"
    words["other"] = source.id
    words["its"] = next((screw.text for screw, _ in values(proof, source.screw, here)), "")
    where = reduce(or_, (found[3] for found in group))
    related = (Related(hole.span, "the record tells here what this hole takes"),)
    return Hit(span, words, related, where, shown(proof, move.step))
