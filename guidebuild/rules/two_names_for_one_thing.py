"""A part is written in another way than its name in the record.

"Print head", "printhead" and "print-head" are one part to the writer, and three to a search, to a
translator and to the person who looks for it in a list.

Source: rule 1.11 in public digests of simplified technical English (restated): one technical noun
for one item.
"""

import re
from collections.abc import Iterator
from functools import cache

from guidebuild.guide.language.spoken import spoken
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "`{words}` is called `{name}` in the record"

HELP = "write `{name}`, as the record does"

_GAP = r"[\s\u00a0-]?"


def check(proof: Proof) -> Iterator[Hit]:
    names = {thing.name.text for thing in proof.device.things.values() if thing.name}
    several = [
        (name, _glance(name))
        for name in sorted(names)
        if len(re.split(_GAP, name)) > 1 or " " in name
    ]
    for sentence in spoken(proof.guide):
        glance = _glance(sentence.text)
        for name in [name for name, joined in several if joined in glance]:
            for found in _twins(name).finditer(sentence.text):
                if _joined(found[0]) == _joined(name) and found[0].lower() != name.lower():
                    place = sentence.at(found.start(), found.end())
                    better = name if found[0][:1].isupper() else name[:1].lower() + name[1:]
                    words = {"words": found[0], "name": better}
                    yield Hit(place, words, edits=(Edit(place, better),))


def _glance(text: str) -> str:
    """All of a text in one: what is not in it is not in the text in any way of writing."""
    return "".join(text.split()).replace("-", "").casefold()


@cache
def _twins(name: str) -> re.Pattern[str]:
    """The name's words with a space, a hyphen or nothing between them."""
    words = [re.escape(word) for word in re.split(r"[\s-]+", name)]
    return re.compile(rf"\b{_GAP.join(words)}\b", re.IGNORECASE)


def _joined(text: str) -> str:
    return re.sub(r"[\s\u00a0-]", "", text).lower()
