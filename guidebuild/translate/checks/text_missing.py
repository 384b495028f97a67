"""A sentence has no translation.

The page shows the source's words there, marked as what they are.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category
from guidebuild.translate.checks.pair import Pair, Slip

RULE = Rule(category=Category.TRANSLATION)

MESSAGE = "`{text}` is not translated"

HELP = "translate it in this catalogue; until then the page shows the source"

MOST = 40


def check(pair: Pair) -> Iterator[Slip]:
    if not pair.text:
        text = pair.segment.text
        yield Slip(0, 0, {"text": text if len(text) <= MOST else f"{text[: MOST - 1]}…"})
