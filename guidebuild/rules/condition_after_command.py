"""The command comes first and its condition behind it.

The hands are done with the sentence at its verb. "Pull the plug if the lamp is out" has been obeyed
before the lamp was looked at.

Source: rule 5.4 in public digests of simplified technical English (restated). The public
plain-language guide of the US government puts long conditions last; at a bench the order of the
hands decides.
"""

import re
from collections.abc import Iterator
from functools import lru_cache

from guidebuild.guide.language.commands import command
from guidebuild.guide.language.lists import Lists, lists
from guidebuild.guide.language.spoken import Sort, spoken
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "the condition `{word} …` stands behind the command"

HELP = "put the condition first, then a comma, then the command"

_CONDITION = re.compile(
    r"(?<=\s)(?P<word>if|unless|provided that|only if|only when|when|once)\s+\w+\s+\w+"
)
_REASON = re.compile(
    r"\b(?:because|so that|since|which|that)\b"
)  # the condition belongs to what these begin
# "see if it moves", "check when it clicks": the clause is what is looked at, not a condition
_LOOKING = {
    "see",
    "check",
    "watch",
    "note",
    "tell",
    "ask",
    "feel",
    "listen",
    "find",
    "mark",
    "record",
    "try",
    "test",
}


def check(proof: Proof) -> Iterator[Hit]:
    words = lists(proof.guide.language)
    for sentence in spoken(proof.guide) if words else ():
        assert words is not None
        if sentence.sort not in (Sort.STEP, Sort.NOTE):
            continue
        found = _condition(sentence.text, words)
        if found is not None:
            yield Hit(sentence.at(found.start("word"), found.end("word")), {"word": found["word"]})


@lru_cache(maxsize=4096)
def _condition(text: str, words: Lists) -> re.Match[str] | None:
    """What stands behind the command of a sentence, where it should stand before it."""
    told = command(text, words)
    if told is None or told.verb in _LOOKING or told.negative:
        return None
    found = _CONDITION.search(text, told.end)
    return None if found is None or _REASON.search(text, told.end, found.start()) else found
