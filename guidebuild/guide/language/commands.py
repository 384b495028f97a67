"""Whether a sentence tells the reader to do something, and what."""

import re
from dataclasses import dataclass
from functools import lru_cache

from guidebuild.guide.language.lists import Lists
from guidebuild.guide.language.words import tokens

_CONDITION = re.compile(
    r"^(?:if|when|where|once|unless|until|before|after|while|as soon as)\b[^,]*,\s*", re.I
)
_LEAD = re.compile(
    r"^(?:now|then|next|first|finally|please|always|do not|don't|never|slowly|gently|carefully),?\s+",
    re.I,
)


@dataclass(frozen=True, slots=True)
class Command:
    """`verb` in small letters; `start` and `end` of it in the sentence; `negative`: do not."""

    verb: str
    start: int
    end: int
    negative: bool


@lru_cache(maxsize=4096)  # several rules ask this of each sentence
def command(sentence: str, words: Lists) -> Command | None:
    """The first imperative of a sentence, behind its condition and its adverbs; None where there is none."""
    start = 0
    negative = False
    condition = _CONDITION.match(sentence)
    if condition:
        start = condition.end()
    while lead := _LEAD.match(sentence[start:]):
        negative = negative or lead[0].lower().startswith(("do not", "don't", "never"))
        start += lead.end()
    for kind, text, first, last in tokens(sentence[start:])[:1]:
        if kind == "word" and text.lower() in words.verbs:
            return Command(text.lower(), start + first, start + last, negative)
    return None
