"""A language that nobody speaks: longer, accented, or right to left, to see what will not fit before it costs.

The tags are CLDR's: `en-XA` for accents, `ar-XB` for right to left. Growth as measured of 8 European languages
(95th percentile): three times for short words, a third more for long sentences.
"""

import re

ACCENTED, MIRRORED = "en-XA", "ar-XB"
_ACCENTS = str.maketrans(
    "AaCcDdEeGgHhIiJjKkLlNnOoRrSsTtUuWwYyZz", "ÅåÇçÐðÉéĜĝĤĥÎîĴĵĶķĻļÑñÖöŔŕŠšŢţÛûŴŵÝýŽž"
)
_KEPT = re.compile(r"(</?\d+/?>|&[a-z]+;|\d[\d.,]*(?:\s?[^\W\d_]+(?:·[^\W\d_]+)?)?)")
_GROWTH = ((10, 2.0), (20, 0.9), (50, 0.6), (70, 0.45), (10**9, 0.35))  # above 1
_FILL = "one two three four five six seven eight nine ten eleven twelve"


def is_pseudo(language: str) -> bool:
    """Whether a tag is one of the two."""
    return language in (ACCENTED, MIRRORED)


def pseudo(text: str, language: str) -> str:
    """The text with its codes, numbers and units as they are, and the rest accented and longer."""
    pieces = _KEPT.split(text)
    said = "".join(
        piece if number % 2 else piece.translate(_ACCENTS) for number, piece in enumerate(pieces)
    )
    growth = next(share for length, share in _GROWTH if len(text) <= length)
    more = (_FILL * 20)[: round(len(text) * growth)].strip()
    said = f"[{said} {more}]" if more else f"[{said}]"
    return f"\u202b{said}\u202c" if language == MIRRORED else said
