"""A word leaves the reader to guess how much, how many or how long.

"A few turns" is two for one hand and ten for another. Where the figure is known it stands; where it
is not, the sign by which the reader knows that it is enough stands in its place ("until it
clicks").

Source: common practice, no source; the list of words is our own.
"""

import re
from collections.abc import Iterator
from functools import cache, lru_cache

from guidebuild.guide.language.lists import Lists, lists
from guidebuild.guide.language.spoken import Sort, spoken
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "`{words}` does not say how much"

HELP = "say the figure with its unit, or the sign by which the reader knows that it is enough"


def check(proof: Proof) -> Iterator[Hit]:
    words = lists(proof.guide.language)
    if words is None:
        return
    for sentence in spoken(proof.guide):
        if sentence.sort in (Sort.STEP, Sort.NOTE, Sort.CHECK):
            for start, end in _vague(sentence.text, words):
                yield Hit(sentence.at(start, end), {"words": sentence.text[start:end]})


@lru_cache(maxsize=4096)
def _vague(text: str, words: Lists) -> tuple[tuple[int, int], ...]:
    return tuple([found.span() for found in _pattern(words).finditer(text)])


@cache
def _pattern(words: Lists) -> re.Pattern[str]:
    ways = (
        re.escape(one).replace("<n>", r"\d[\d.,]*")
        for one in sorted(words.vague, key=len, reverse=True)
    )
    return re.compile(rf"\b(?:{'|'.join(ways)})(?!\w)", re.IGNORECASE)
