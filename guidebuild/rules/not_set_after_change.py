"""A part is changed whose record says what must be set afterwards, and no step sets it.

A new print head prints pale with the setting of the old one, a new sensor weighs with the old one's zero. The page
tells the reader to set it, but not how.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.naming import called
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.changed import left_unset
from guidebuild.proof.questions.history import place
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "{part} is changed here, and nothing sets {thing} after it"

HELP = "add `restore: {id}` in a `store` block after it, or say in the front matter's `after` what the reader does"


def check(proof: Proof) -> Iterator[Hit]:
    things = proof.device.things
    for one in left_unset(proof):
        words = {
            "part": called(proof.device, one.part),
            "thing": called(proof.device, one.store),
            "id": things[one.store].id,
        }
        related = (Related(things[one.part].span, "said here"),)
        yield Hit(place(one.move), words, related, one.where)
