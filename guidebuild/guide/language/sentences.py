"""Where one sentence ends and the next begins."""

import re
from functools import lru_cache

# A full stop behind these ends no sentence.
_SHORT = {
    "no",
    "nos",
    "fig",
    "figs",
    "approx",
    "max",
    "min",
    "dia",
    "e.g",
    "i.e",
    "etc",
    "vs",
    "rev",
    "d.c",
    "a.c",
}
_END = re.compile(r"([.!?…]+[\"')\]”’]*)(?=\s|$)|[。！？]")
_WORD_BEFORE = re.compile(r"[\w.]+$")


@lru_cache(maxsize=4096)  # the same words stand in many steps, and several rules ask
def sentences(text: str) -> tuple[tuple[int, int], ...]:
    """Start and end of each sentence, without the white space around it; the rest without a stop counts too.

    A stop ends a sentence only where a capital, a figure or nothing follows, so `approx. 3 mm` stays whole.
    """
    found: list[tuple[int, int]] = []
    start = 0
    for match in _END.finditer(text):
        if match.start() < start or not _ends(text, match):
            continue
        _add(found, text, start, match.end())
        start = match.end()
    _add(found, text, start, len(text))
    return tuple(found)


def _ends(text: str, match: re.Match[str]) -> bool:
    if match[1] is None or match[1][0] in "!?…":
        return True
    word = _WORD_BEFORE.search(text[: match.start()])
    if word and word[0].lower() in _SHORT:
        return False
    rest = text[match.end() :].lstrip()
    return not rest or not rest[0].islower()


def _add(found: list[tuple[int, int]], text: str, start: int, end: int) -> None:
    piece = text[start:end]
    first = start + len(piece) - len(piece.lstrip())
    last = start + len(piece.rstrip())
    if first < last:
        found.append((first, last))
