"""A measured number stands without its unit.

"Lift it by 20" is 20 mm to the writer and 20 degrees to the reader.

Source: common practice, no source.
"""

import re
from collections.abc import Iterator
from functools import lru_cache

from guidebuild.guide.language.lists import lists
from guidebuild.guide.language.spoken import spoken
from guidebuild.guide.language.words import tokens
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "`{number}` has no unit"

HELP = "write the unit behind the number, as in `20 mm` or `0.3 N·m`"

# A whole number counts things, names a step or a pin; it is a measure only where such a word leads to it.
_LEADS = re.compile(
    r"\b(?:by|about|approx\.?|over|under|below|above|at least|at most|more than|less than)\s+$",
    re.I,
)
_BREAKS = re.compile(r"^\s*(?:$|[.,;:!?)])")
_NAMES = re.compile(
    r"\b(?:version|revision|rev\.?|issue|figure|fig\.?|section|table|size|type|ratio|of)\s+$", re.I
)


def check(proof: Proof) -> Iterator[Hit]:
    if lists(proof.guide.language) is None:
        return
    for sentence in spoken(proof.guide):
        for start, end in _bare(sentence.text):
            yield Hit(sentence.at(start, end), {"number": sentence.text[start:end]})


@lru_cache(maxsize=4096)
def _bare(text: str) -> tuple[tuple[int, int], ...]:
    """The places of numbers that want a unit."""
    return tuple(
        (start, end)
        for kind, number, start, end in tokens(text)
        if kind == "number" and _wants_unit(text, number, start, end)
    )


def _wants_unit(sentence: str, number: str, start: int, end: int) -> bool:
    before, behind = sentence[:start], sentence[end:]
    if _BREAKS.match(behind) is None or _NAMES.search(before):
        return False
    return "." in number.rstrip(".") or _LEADS.search(before) is not None
