"""A picture has no words for those who can't see it.

A screen reader says its file's name; a page printed without pictures has a hole; a translator does not know what it
shows.

Source: WCAG 2.2, success criterion 1.1.1 (non-text content).
"""

from collections.abc import Iterator

from guidebuild.guide.inside import pictures_in
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "`{name}` has no description"

HELP = "say in the square brackets what the reader is to see: `![The plug plate on the main board]({name})`"


def check(proof: Proof) -> Iterator[Hit]:
    for picture in pictures_in(proof.guide):
        if not picture.alt.text.strip():
            yield Hit(picture.span, {"name": picture.file.text})
