"""A word is used that the publisher's list, or the plain-language list, tells to replace.

One word for one thing and for one act: readers of a second language, and translators, take another
word for another meaning. A publisher's own words stand in `terms.yaml`; beside it the tool knows
long words with a short twin.

Source: the list "Use simple words and phrases" of plainlanguage.gov (public domain, CC0), rows from
memory.
"""

import re
from collections.abc import Iterator, Mapping
from functools import cache

from guidebuild.guide.content import Content
from guidebuild.guide.language.lists import lists
from guidebuild.guide.language.spoken import spoken
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category
from guidebuild.source.said import Said

RULE = Rule(category=Category.TEXT)

MESSAGE = "`{word}` is not an approved word"

HELP = "say `{instead}`"


_WORD = re.compile(r"\w+")


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    language = proof.guide.language
    words = lists(language)
    terms = content.terms.get(language)
    avoid = {**(words.plain if words else {}), **(_said(terms.forbidden) if terms else {})}
    if not avoid:
        return
    pattern, firsts = _pattern(tuple(avoid)), _firsts(tuple(avoid))
    for sentence in spoken(proof.guide):
        if firsts and firsts.isdisjoint(_WORD.findall(sentence.text.casefold())):
            continue  # far quicker than the pattern, and so for nearly every sentence
        for found in pattern.finditer(sentence.text):
            instead = avoid[found[0].lower()]
            yield Hit(
                sentence.at(found.start(), found.end()), {"word": found[0], "instead": instead}
            )


def _said(forbidden: Mapping[str, Said]) -> dict[str, str]:
    return {word.lower(): instead.text for word, instead in forbidden.items()}


@cache
def _firsts(avoid: tuple[str, ...]) -> frozenset[str]:
    """The first word of each phrase: without it the phrase is not there. Empty where one has no word."""
    words = [_WORD.findall(one.casefold()) for one in avoid]
    return frozenset(found[0] for found in words) if all(words) else frozenset()


@cache
def _pattern(avoid: tuple[str, ...]) -> re.Pattern[str]:
    ways = "|".join(re.escape(one) for one in sorted(avoid, key=len, reverse=True))
    return re.compile(rf"\b(?:{ways})\b", re.IGNORECASE)
