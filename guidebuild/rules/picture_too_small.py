"""A picture has fewer pixels than the page shows.

On the bench it fills half a screen and is read from 70 cm; blown up, the screw that matters is a grey patch.

Source: 960 pixels is our own figure: half of a screen of 1920, which the picture of a step takes in bench mode.
"""

from collections.abc import Iterator

from guidebuild.guide.content import Content
from guidebuild.guide.inside import pictures_in
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "`{name}` is {width} by {height} pixels"

HELP = "take it again, or send the camera's own file: the longer side has at least {least} pixels"

LEAST = 960


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    for picture in pictures_in(proof.guide):
        facts = content.pictures.get(picture.path)
        if facts is not None and max(facts.width, facts.height) < LEAST:
            size = {"width": facts.width, "height": facts.height, "least": LEAST}
            yield Hit(picture.file.span, {"name": picture.file.text, **size})
