"""A sentence says "in reverse order" where the steps back should stand.

One bolt with eight nuts comes apart in one order and can go together in 40,320. Putting back is
where most is forgotten, and it is never the mere reverse: plugs in another order, torques, a seal
that is new, a test before the cover. The proof can't see what is not written.

Source: omissions are the largest class of maintenance errors, Reason 2002 (abstract read); the
figure is 8!.
"""

import re
from collections.abc import Iterator
from functools import lru_cache

from guidebuild.guide.language.spoken import spoken
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "this stands instead of the steps that put it back"

HELP = "write the steps; `same-as: step-id` does the acts of another step again"


REVERSE = re.compile(
    r"\b(?:in (?:the )?(?:reverse|opposite|inverse)(?: order| sequence)?|(?:reverse|opposite) (?:order|sequence)"
    r"|reverse (?:the|these|all) (?:steps|procedure|instructions)|backwards through (?:the|these) steps)\b",
    re.IGNORECASE,
)
ASSEMBLE = re.compile(
    r"\b(?:assembl\w+|reassembl\w+|refit\w*|reinstall\w*|install\w*|put|steps|procedure|instructions|fit|close)\b",
    re.IGNORECASE,
)


def check(proof: Proof) -> Iterator[Hit]:
    for sentence in spoken(proof.guide):
        found = _reverse(sentence.text)
        if found is not None:
            yield Hit(sentence.at(found.start(), found.end()))


@lru_cache(maxsize=4096)
def _reverse(text: str) -> re.Match[str] | None:
    found = REVERSE.search(text)
    return found if found and ASSEMBLE.search(text) and " not " not in text.lower() else None
