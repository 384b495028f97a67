"""A picture's metadata tell where it was taken.

The builder takes all metadata out of what it writes; the author's own file still has them, and so has the repository.

Source: common practice, no source; the place stands in the GPS part of EXIF.
"""

from collections.abc import Iterator

from guidebuild.guide.content import Content
from guidebuild.guide.inside import pictures_in
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "`{name}` tells where it was taken"

HELP = "take the place out of the file before you share the content folder; the built page never has it"


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    for picture in pictures_in(proof.guide):
        facts = content.pictures.get(picture.path)
        if facts is not None and facts.tells_place:
            yield Hit(picture.file.span, {"name": picture.file.text})
