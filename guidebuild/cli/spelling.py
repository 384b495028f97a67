"""The nearest spelling of a misspelt word."""

from collections.abc import Iterable
from difflib import get_close_matches


def did_you_mean(word: str, known: Iterable[str], most: int = 3) -> str:
    """`Did you mean ...?`, or all that there is where nothing is near and the list is short."""
    known = list(known)
    near = get_close_matches(word, known, n=most, cutoff=0.6)
    if near:
        return f"Did you mean {' or '.join(near)}?"
    return f"There are: {', '.join(known)}." if len(known) <= 12 else ""
