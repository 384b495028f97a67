"""How much of a caption a reader can take in, in each language.

Sources: BBC Subtitle Guidelines 3.1 to 4.5 (160 to 180 words a minute, two lines). Characters a second, line lengths,
shortest, longest and two frames between: the code of a public subtitle editor, which restates a streaming guideline.
For Latin scripts 15 characters a second are taken here and not 17: the BBC gives technical items more time.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Limits:
    """`speed`: characters a second; `line`: characters; times in milliseconds; `words`: a minute, 0 for none."""

    speed: int
    line: int
    lines: int = 2
    shortest: int = 833
    longest: int = 7000
    gap: int = 80  # two frames of 25 a second: less looks like a flicker
    words: int = 180


_LATIN = Limits(speed=15, line=42)
_OTHER = Limits(speed=17, line=42)
_BY_LANGUAGE = {
    "ar": Limits(speed=20, line=42),
    "hi": Limits(speed=22, line=42),
    "th": Limits(speed=17, line=35, words=0),
    "ko": Limits(speed=12, line=16),
    "zh": Limits(speed=9, line=16, words=0),
    "ja": Limits(speed=4, line=23, shortest=500, words=0),
}
_NOT_LATIN = frozenset({"be", "bg", "el", "fa", "he", "hy", "ka", "mk", "ru", "sr", "uk", "ur"})
WIDE = frozenset({"ja", "ko", "zh"})  # one of their characters is as wide as two others


def limits(language: str) -> Limits:
    """The limits of a language tag."""
    short = language.partition("-")[0].lower()
    return _BY_LANGUAGE.get(short, _OTHER if short in _NOT_LATIN else _LATIN)
