"""What is the same at one place, said once: two screws of one entry in the record are one mistake."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from guidebuild.proof.hit import Hit


def once(hits: Iterable[Hit]) -> Iterator[Hit]:
    """Hits of one span and the same words joined, in the order of the first; their configurations add up."""
    found: dict[object, Hit] = {}
    for hit in hits:
        key = hit.span, tuple(hit.words.items())
        first = found.get(key)
        found[key] = hit if first is None else replace(first, where=_either(first.where, hit.where))
    yield from found.values()


def _either(one: int | None, other: int | None) -> int | None:
    return None if one is None or other is None else one | other
