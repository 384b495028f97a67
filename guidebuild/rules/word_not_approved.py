"""A word is used that the publisher's list, or the plain-language list, tells to replace.

One word for one thing and for one act: readers of a second language, and translators, take another word for another
meaning. A publisher's own words stand in `terms.yaml`; beside it the tool knows long words with a short twin.

Source: the list "Use simple words and phrases" of plainlanguage.gov (public domain, CC0), rows from memory.
"""

import re
from collections.abc import Iterator, Mapping

from guidebuild.guide.language.lists import lists
from guidebuild.guide.language.spoken import spoken
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "`{word}` is not an approved word"

HELP = "say `{instead}`"


def check(proof: Proof) -> Iterator[Hit]:
    words = lists(proof.guide.language)
    if words is None or not words.plain:
        return
    pattern = _pattern(words.plain)
    for sentence in spoken(proof.guide):
        for found in pattern.finditer(sentence.text):
            instead = words.plain[found[0].lower()]
            yield Hit(
                sentence.at(found.start(), found.end()), {"word": found[0], "instead": instead}
            )


def _pattern(avoid: Mapping[str, str]) -> re.Pattern[str]:
    ways = "|".join(re.escape(one) for one in sorted(avoid, key=len, reverse=True))
    return re.compile(rf"\b(?:{ways})\b", re.IGNORECASE)
