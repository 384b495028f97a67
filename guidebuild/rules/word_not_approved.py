"""A word is used that the publisher's list, or the plain-language list, tells to replace.

One word for one thing and for one act: readers of a second language, and translators, take another
word for another meaning. A publisher's own words stand in `terms.yaml`; beside it the tool knows
long words with a short twin.

Source: the list "Use simple words and phrases" of plainlanguage.gov (public domain, CC0), rows from
memory.
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache

from guidebuild.guide.content import Content
from guidebuild.guide.language.lists import Lists, lists
from guidebuild.guide.language.spoken import spoken
from guidebuild.guide.settings import Terms
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category
from guidebuild.source.remembered import remembered
from guidebuild.source.said import Said

RULE = Rule(category=Category.TEXT)

MESSAGE = "`{word}` is not an approved word"

HELP = "say `{instead}`"


_WORD = re.compile(r"\w+")


@dataclass(frozen=True, slots=True, eq=False)  # one object for all guides: told apart by identity
class _Avoided:
    """`instead`: what to say for each word or phrase, in small letters. `firsts`: the first word of each.

    Without its first word a phrase is not there. Empty where one has no word.
    """

    instead: dict[str, str]
    firsts: frozenset[str]
    pattern: re.Pattern[str]


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    language = proof.guide.language
    avoided = _avoided(lists(language), content.terms.get(language))
    if avoided.instead:
        for sentence in spoken(proof.guide):
            for start, end in _places(sentence.text, avoided):
                word = sentence.text[start:end]
                words = {"word": word, "instead": avoided.instead[word.lower()]}
                yield Hit(sentence.at(start, end), words)


@lru_cache(maxsize=4096)
def _places(text: str, avoided: _Avoided) -> tuple[tuple[int, int], ...]:
    """Where a text says what is to be avoided."""
    if avoided.firsts and avoided.firsts.isdisjoint(_WORD.findall(text.casefold())):
        return ()  # far quicker than the pattern, and so for nearly every sentence
    return tuple([found.span() for found in avoided.pattern.finditer(text)])


@remembered
def _avoided(words: Lists | None, terms: Terms | None) -> _Avoided:
    instead = {**(words.plain if words else {}), **(_said(terms.forbidden) if terms else {})}
    starts = [_WORD.findall(one.casefold()) for one in instead]
    ways = "|".join(re.escape(one) for one in sorted(instead, key=len, reverse=True))
    return _Avoided(
        instead,
        frozenset(found[0] for found in starts) if all(starts) else frozenset(),
        re.compile(rf"\b(?:{ways})\b", re.IGNORECASE),
    )


def _said(forbidden: Mapping[str, Said]) -> dict[str, str]:
    return {word.lower(): instead.text for word, instead in forbidden.items()}
