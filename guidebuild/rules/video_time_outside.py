"""A piece of a film ends after the film does.

The reader gets a picture that stands still, or nothing. Mostly a time is mistyped, or the film was cut again.

Source: common practice, no source; the film's length is read from its own head.
"""

from collections.abc import Iterator
from decimal import Decimal

from guidebuild.guide.blocks.video import Video
from guidebuild.guide.content import Content
from guidebuild.guide.inside import items, steps_with
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "this piece ends at {end} s, and the film at {length} s"

HELP = "give times within the film: it is {length} s long"


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    for step in steps_with(proof.guide, Video):
        for item in items(step):
            if isinstance(item, Video):
                length = _length(item, proof, content)
                if length is not None and item.end > length:
                    yield Hit(item.span, {"end": item.end, "length": length})


def _length(item: Video, proof: Proof, content: Content) -> Decimal | None:
    """The film's length: it lies in the guide's own folder."""
    name = item.file or proof.guide.video
    folder = proof.guide.path.removesuffix(".md")
    return content.films.get(f"{folder}/{name.text}") if name else None
