"""A signal word stands in the translation of a sentence.

DANGER, WARNING, CAUTION and NOTICE come from the tool's table, four different words in every language. Typed by hand
they stand twice, and often as the word of another level.

Source: ANSI Z535.6 signal words (restated); of 56 locale files of a general documentation toolkit 13 use one word for
two of the levels (measured).
"""

import re
from collections.abc import Iterator

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category, Loudness
from guidebuild.translate.catalogue.pair import Pair, Slip
from guidebuild.translate.signal_words import signal_words

RULE = Rule(category=Category.TRANSLATION, loudness=Loudness.ERROR)

MESSAGE = "the signal word `{word}` is typed by hand"

HELP = "take it out: the tool writes it above the message"


def check_pair(pair: Pair) -> Iterator[Slip]:
    for word in signal_words(pair.language).values():
        found = re.match(rf"\W*({re.escape(word)})\s*[:!–-]", pair.text, re.IGNORECASE)
        if found and not pair.segment.text.upper().startswith(word.upper()):
            yield Slip(found.start(1), found.end(1), {"word": found[1]})
            return
