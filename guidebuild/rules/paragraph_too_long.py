"""A paragraph has more than the eye finds again after a look at the device.

Six sentences at most, and 150 words. What is longer is mostly several steps in one.

Source: six sentences: rule 6.6 in public digests of simplified technical English (restated); 150
words: plainlanguage.gov, "Write short paragraphs".
"""

from collections.abc import Iterator
from functools import lru_cache

from guidebuild.guide.language.lists import lists
from guidebuild.guide.language.sentences import sentences
from guidebuild.guide.language.spoken import paragraphs
from guidebuild.guide.language.words import count_words
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "this paragraph has {sentences} sentences and {words} words"

HELP = "part it where the hands change what they do; at most 6 sentences and 150 words"

SENTENCES, WORDS = 6, 150


def check(proof: Proof) -> Iterator[Hit]:
    if lists(proof.guide.language) is None:
        return
    for paragraph in paragraphs(proof.guide):
        count, words = _size(paragraph.text)
        if count > SENTENCES or words > WORDS:
            yield Hit(paragraph.span, {"sentences": count, "words": words})


@lru_cache(maxsize=4096)
def _size(text: str) -> tuple[int, int]:
    return len(sentences(text)), count_words(text)
