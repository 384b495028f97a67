"""A point lies outside of its picture.

Places are per cent of width and height, from 0 to 100 each. What lies outside is drawn nowhere.

Source: common practice, no source.
"""

from collections.abc import Iterator
from decimal import Decimal

from guidebuild.guide.blocks.points import Place, Points
from guidebuild.guide.inside import items, steps_with
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "the point [{x}, {y}]{of} lies outside of its picture"

HELP = "give it in per cent of width and height, from 0 to 100 each"


def check(proof: Proof) -> Iterator[Hit]:
    for step in steps_with(proof.guide, Points):
        for block in items(step):
            if isinstance(block, Points):
                for place in _all(block):
                    if _outside(place):
                        yield Hit(block.span, {"x": place[0], "y": place[1], "of": ""})
    for picture in proof.device.pictures.values():
        for id_, place in picture.points.items():
            if _outside(place):
                yield Hit(picture.file.span, {"x": place[0], "y": place[1], "of": f" of `{id_}`"})


def _all(block: Points) -> Iterator[Place]:
    yield from block.here
    for corners in block.keep_out:
        yield from corners
    for way in block.arrow:
        yield from way


def _outside(place: Place) -> bool:
    return any(not Decimal(0) <= one <= Decimal(100) for one in place)
