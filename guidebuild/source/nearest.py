"""The valid spelling that is most like what an author wrote."""

from collections.abc import Iterable, Mapping

from guidebuild.source.bench_words import BENCH_WORDS

ENOUGH = 0.6  # likeness below which a suggestion would puzzle more than help
SURE = 0.8  # likeness from which reading goes on as if it had been written so


def nearest(word: str, among: Iterable[str], enough: float = ENOUGH) -> str | None:
    """The one of `among` that `word` is the bench's word for, else the one most like it, else None."""
    from difflib import (
        get_close_matches,  # slow to import, and needed only where something is wrong
    )

    plain = {_plain(name): name for name in among}
    found = get_close_matches(_plain(word), plain, n=1, cutoff=SURE) or _bench(word, plain)[:1]
    found = found or get_close_matches(_plain(word), plain, n=1, cutoff=enough)
    return plain[found[0]] if found else None


def meant(word: str, among: Iterable[str]) -> str | None:
    """The one of `among` that `word` surely means: very like it and no other nearly as like, or its one bench word."""
    from difflib import get_close_matches

    plain = {_plain(name): name for name in among}
    found = get_close_matches(_plain(word), plain, n=2, cutoff=SURE)
    if not found:
        said = _bench(word, plain)
        return plain[said[0]] if len(said) == 1 else None
    if len(found) > 1 and _like(word, found[0]) - _like(word, found[1]) < 0.05:
        return None
    return plain[found[0]]


def _bench(word: str, plain: Mapping[str, str]) -> list[str]:
    return [one for one in BENCH_WORDS.get(_plain(word), ()) if one in plain]


def _like(word: str, other: str) -> float:
    from difflib import SequenceMatcher

    return SequenceMatcher(None, other, _plain(word)).ratio()


def _plain(word: str) -> str:
    """Capitals, spaces and underscores are no difference."""
    return word.strip().casefold().replace("_", "-").replace(" ", "-")
