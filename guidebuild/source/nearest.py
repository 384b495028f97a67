"""The valid spelling that is most like what an author wrote."""

from collections.abc import Iterable

ENOUGH = 0.6  # likeness below which a suggestion would puzzle more than help
SURE = 0.8  # likeness from which reading goes on as if it had been written so


def nearest(word: str, among: Iterable[str], enough: float = ENOUGH) -> str | None:
    """The one of `among` most like `word`, or None where none is like it."""
    from difflib import (
        get_close_matches,  # slow to import, and needed only where something is wrong
    )

    plain = {_plain(name): name for name in among}
    found = get_close_matches(_plain(word), plain, n=1, cutoff=enough)
    return plain[found[0]] if found else None


def meant(word: str, among: Iterable[str]) -> str | None:
    """The one of `among` that `word` surely means: very like it, and no other nearly as like."""
    from difflib import get_close_matches

    plain = {_plain(name): name for name in among}
    found = get_close_matches(_plain(word), plain, n=2, cutoff=SURE)
    if not found or (len(found) > 1 and _like(word, found[0]) - _like(word, found[1]) < 0.05):
        return None
    return plain[found[0]]


def _like(word: str, other: str) -> float:
    from difflib import SequenceMatcher

    return SequenceMatcher(None, other, _plain(word)).ratio()


def _plain(word: str) -> str:
    """Capitals, spaces and underscores are no difference."""
    return word.strip().casefold().replace("_", "-").replace(" ", "-")
