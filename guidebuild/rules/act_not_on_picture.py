"""A step's picture marks some of what the step works on, and leaves out the rest.

The reader takes the marks for all there is: what is not marked stays in.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.naming import called
from guidebuild.device.states import Kind
from guidebuild.guide.inside import items, steps_with
from guidebuild.guide.prose import Picture
from guidebuild.guide.step import Step
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "{thing} has no point on the picture, as others of this step have"

HELP = "give it a point under `pictures:` in the record, or show it in a picture of its own"


def check(proof: Proof) -> Iterator[Hit]:
    for passage in proof.passages if steps_with(proof.guide, Picture) else ():
        marked = _marked(proof, passage.step)
        if not marked:
            continue
        moves = [one.doing for one in passage.walked if isinstance(one.doing, Move)]
        small = [move for move in moves if proof.device.things[move.thing].kind is Kind.FASTENER]
        if not any(_ids(proof, move) & marked for move in small):
            continue
        told: set[str] = set()
        for move in small:
            if not _ids(proof, move) & marked and move.thing not in told:
                told.add(move.thing)
                yield Hit(move.span, {"thing": called(proof.device, move.thing)})


def _marked(proof: Proof, step: Step) -> set[str]:
    shown = {item.file.text for item in items(step) if isinstance(item, Picture)}
    points = [one for one in proof.device.pictures.values() if one.file.text in shown]
    return {id_ for one in points for id_ in one.points}


def _ids(proof: Proof, move: Move) -> set[str]:
    id_ = proof.device.things[move.thing].id
    return {id_, id_.partition(".")[0]}
