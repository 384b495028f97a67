"""The nearest spelling of a misspelt word."""

from collections.abc import Iterable
from difflib import get_close_matches

from guidebuild.source.nearest import nearest


def did_you_mean(word: str, known: Iterable[str], most: int = 3) -> str:
    """`Did you mean ...?`, or all that there is where nothing is near and the list is short."""
    known = list(known)
    first = nearest(word, known)
    near = [*([first] if first else []), *get_close_matches(word, known, n=most, cutoff=0.6)]
    near = list(dict.fromkeys(near))[:most]
    if near:
        return f"Did you mean {' or '.join(near)}?"
    return f"There are: {', '.join(known)}." if len(known) <= 12 else ""
