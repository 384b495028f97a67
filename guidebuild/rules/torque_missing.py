"""A screw is tightened and nobody says how tight.

One bench strips the thread, the next leaves the screw to shake loose, and neither knows. The
record says a figure, or `by-hand`, or, where the maker never said, `not-known`: then the reader
knows that it was not forgotten.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.guide.blocks.fastener import FastenerAct
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.cases import values
from guidebuild.proof.questions.history import place
from guidebuild.proof.questions.screws_used import TIGHTENED, Driven, driven
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "the record does not say how tight {group} is"

HELP = "give `torque:` a figure with its unit, `by-hand`, or `not-known`"


def check(proof: Proof) -> Iterator[Hit]:
    found: dict[str, tuple[Driven, int]] = {}
    for one in driven(proof, TIGHTENED):
        silent = _silent(proof, one)
        if silent:
            first, before = found.get(one.hole.group, (one, 0))
            found[one.hole.group] = first, before | silent
    for group, (one, where) in found.items():
        span = proof.device.groups[group].span if group in proof.device.groups else one.hole.span
        related = (Related(place(one.move), "tightened here"),)
        yield Hit(span, {"group": group}, related, where)


def _silent(proof: Proof, one: Driven) -> int:
    """The configurations in which neither the act nor the record says a torque."""
    if isinstance(one.move.act, FastenerAct) and one.move.act.torque is not None:
        return 0
    said = 0
    for _, where in values(proof, one.hole.torque, one.where):
        said |= where
    return one.where ^ (one.where & said)
