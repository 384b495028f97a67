"""A later step shows an earlier piece of the same film.

Chapters are made from the steps' times. Out of order they jump back, and a reader who lets the film run sees another
step than the one in hand. Mostly a time is mistyped.

Source: W3C WebVTT: the start of a cue is not before any earlier cue's.
"""

from collections.abc import Iterator
from decimal import Decimal

from guidebuild.guide.blocks.video import Video
from guidebuild.guide.inside import items, steps_with
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "this piece begins at {start} s, before the one of an earlier step at {before} s"

HELP = "check the times; if the film was cut in another order, cut it again or use a film a step"


def check(proof: Proof) -> Iterator[Hit]:
    last: dict[str, tuple[Decimal, Video]] = {}
    for stage in proof.guide.stages if steps_with(proof.guide, Video) else ():
        if stage.remedy is not None:
            continue  # a remedy may go back
        for step in stage.steps:
            for item in items(step):
                if isinstance(item, Video):
                    yield from _one(item, last)


def _one(item: Video, last: dict[str, tuple[Decimal, Video]]) -> Iterator[Hit]:
    film = item.file.text if item.file else ""
    before = last.get(film)
    if before is not None and item.start < before[0]:
        related = (Related(before[1].span, "the earlier step"),)
        yield Hit(item.span, {"start": item.start, "before": before[0]}, related)
    else:
        last[film] = (item.start, item)
