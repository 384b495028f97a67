"""A sentence says "in reverse order" where the steps back should stand.

One bolt with eight nuts comes apart in one order and can go together in 40,320. Putting back is
where most is forgotten, and it is never the mere reverse: plugs in another order, torques, a seal
that is new, a test before the cover. The proof can't see what is not written.

Source: omissions are the largest class of maintenance errors, Reason 2002 (abstract read); the
figure is 8!.
"""

import re
from collections.abc import Iterator

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
        found = REVERSE.search(sentence.text)
        if found and ASSEMBLE.search(sentence.text) and " not " not in sentence.text.lower():
            yield Hit(sentence.at(found.start(), found.end()))
