"""The source says what not to do or what is not, and its translation has no word for it.

"Do not touch the studs" without its "not" is an order to touch them. The check looks for words only: a sentence may say
the same in another way, so nothing is refused for it.

Source: of 183 public edits that were alike to three quarters 29 differed in their words of negation (measured); the
lists of words are our own.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category
from guidebuild.translate.catalogue.negation import may_deny, negations
from guidebuild.translate.catalogue.pair import Pair, Slip

RULE = Rule(category=Category.TRANSLATION)

MESSAGE = "the source says `{word}`, and no word of this sentence does"

HELP = "say it as the source does; where it means the same, write `# allow negation-lost: why` above its entry"


def check_pair(pair: Pair) -> Iterator[Slip]:
    denied = negations(pair.segment.text, pair.source_language)
    if denied and not may_deny(pair.text, pair.language):
        yield Slip(0, len(pair.text), {"word": first_of(pair.segment.text, pair.source_language)})


def first_of(text: str, language: str) -> str:
    """The first word of negation of a text that has one."""
    words = text.replace("\u00a0", " ").split(" ")
    return next((one.strip(".,;:!?()") for one in words if negations(one, language)), text)
