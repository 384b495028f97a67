"""An instruction says what should be done, not what to do.

"The cover must be removed" leaves open who does it, and when. "Remove the cover" is read as an
order to the hand.

Source: rule 5.3 in public digests of simplified technical English (restated).
"""

import re
from collections.abc import Iterator
from functools import lru_cache

from guidebuild.guide.language.lists import lists
from guidebuild.guide.language.spoken import Sort, spoken
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "`{words}` says what should be done, not what to do"

HELP = "begin with the verb: `Lift the cover`, not `the cover must be lifted`"

_SHOULD_BE = re.compile(
    r"\b(?:must|should|shall|has to|have to|needs to|need to|is to|are to|can now|may now)"
    r"\s+be\s+\w+(?:ed|en|ne|ut|de|un)\b"
    r"|\byou\s+(?:must|should|shall|have to|need to|can now|may now|will need to)\s+\w+",
    re.IGNORECASE,
)


def check(proof: Proof) -> Iterator[Hit]:
    if lists(proof.guide.language) is None:
        return
    for sentence in spoken(proof.guide):
        found = _should_be(sentence.text) if sentence.sort in (Sort.STEP, Sort.NOTE) else None
        if found is not None:
            yield Hit(sentence.at(found.start(), found.end()), {"words": found[0]})


@lru_cache(maxsize=4096)
def _should_be(text: str) -> re.Match[str] | None:
    return _SHOULD_BE.search(text)
