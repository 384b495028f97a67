"""Words, and how many a sentence has by the public counting rules of simplified technical writing.

Source: rules 8.5 to 8.7 of the public digests of simplified technical English (restated): one word each are
a number, a number with its unit, an abbreviation, an identifier, a quoted text, a hyphenated word; what
stands in brackets counts as one word here, and as a sentence of its own.
"""

import re
from functools import lru_cache

_UNIT = (
    r"(?:mm|cm|m|km|µm|um|in|kg|g|mg|s|ms|min|h|V|mV|kV|A|mA|W|kW|Ω|kΩ|MΩ|Hz|kHz|MHz|Pa|kPa|bar|N|kN"
    r"|N·m|Nm|cN·m|mN·m|°C|K|°|%|ml|l|L|J|lx|dB|degrees|seconds|minutes)"
)
_NUMBER = r"[+−-]?\d+(?:[.,]\d+)*"
_TOKEN = re.compile(
    rf"(?P<quantity>{_NUMBER}(?:\s*(?:to|–|-)\s*{_NUMBER})?[\s\u00a0]?{_UNIT}(?![\w·]))"
    r"|(?P<bracket>\([^()]*\))"
    r"|(?P<quoted>“[^”]*”|\"[^\"]*\")"
    rf"|(?P<number>{_NUMBER}(?![\w]))"
    r"|(?P<word>[^\W_](?:[\w.·×/&'’-]*[\w])?)"
)


@lru_cache(maxsize=4096)  # several rules ask this of each sentence
def tokens(text: str) -> tuple[tuple[str, str, int, int], ...]:
    """Kind (quantity, bracket, quoted, number, word), text, start and end of each word, in order."""
    found = _TOKEN.finditer(text)
    return tuple([(one.lastgroup or "word", one[0], one.start(), one.end()) for one in found])


def count_words(sentence: str) -> int:
    """The number of words that the limit is about: `Lift the cover 20 mm.` has 4."""
    return len(tokens(sentence))
