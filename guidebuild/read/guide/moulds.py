"""What a block says, kept so that the next block with the same words is made of it: only the places are new.

Guides of one device open and close the same things in the same words. Their blocks are read once; the values of
every later one are made anew with the places of its own.
"""

from collections.abc import Callable
from dataclasses import fields, is_dataclass
from decimal import Decimal
from enum import Enum
from typing import Any, TypeAlias

from guidebuild.guide.step import Item
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source

SHORT = 400  # characters: longer blocks hardly ever come again
MOST = 2000  # moulds that are kept

Cast: TypeAlias = Callable[
    [Source, int, Span], Any
]  # (file, offset of the text, whole block) -> value
_SAME = (str, int, Decimal, Enum, type(None), frozenset)  # has no place in it


class NoMould(Exception):
    """A value holds something of which no other can be made."""


class Moulds:
    """By a block's name and text: how its items are made."""

    def __init__(self) -> None:
        self._known: dict[tuple[str, str], tuple[Cast, ...]] = {}

    def items(
        self, slot: tuple[str, str], source: Source, at: int, block: Span
    ) -> list[Item] | None:
        """The items of a block whose text begins at `at`; None where no such block was kept."""
        casts = self._known.get(slot)
        return None if casts is None else [cast(source, at, block) for cast in casts]

    def keep(self, slot: tuple[str, str], items: list[Item], at: int, block: Span) -> None:
        """Keep what a block without any fault says."""
        if len(slot[1]) > SHORT:
            return
        if len(self._known) >= MOST:
            self._known.clear()
        try:
            self._known[slot] = tuple([_cast(one, at, block) or _same(one) for one in items])
        except NoMould:
            return


def _cast(value: Any, at: int, block: Span) -> Cast | None:
    """How a value is made again with other places; None: it has none, and is the same everywhere."""
    if isinstance(value, _SAME):
        return None
    if isinstance(value, Span):
        return _span(value, at, block)
    if isinstance(value, Said):
        return _said(value, at, block)
    if isinstance(value, tuple):
        return _tuple(value, at, block)
    if is_dataclass(value):
        return _record(value, at, block)
    raise NoMould


def _same(value: Any) -> Cast:
    return lambda source, offset, whole: value


def _span(value: Span, at: int, block: Span) -> Cast:
    if value is block:
        return lambda source, offset, whole: whole
    if value.source is not block.source:
        raise NoMould
    start, end = value.start - at, value.end - at
    return lambda source, offset, whole: Span(source, offset + start, offset + end)


def _said(value: Said, at: int, block: Span) -> Cast:
    text, start, end = _words(value, at, block)
    return lambda source, offset, whole: Said(text, Span(source, offset + start, offset + end))


def _words(value: Said, at: int, block: Span) -> tuple[str, int, int]:
    if value.span.source is not block.source:
        raise NoMould
    return value.text, value.span.start - at, value.span.end - at


def _tuple(value: tuple[Any, ...], at: int, block: Span) -> Cast | None:
    if value and all(type(one) is Said for one in value):  # ids, mostly
        ids = [_words(one, at, block) for one in value]
        return lambda source, offset, whole: tuple(
            [Said(text, Span(source, offset + start, offset + end)) for text, start, end in ids]
        )
    casts = [_cast(one, at, block) for one in value]
    if not any(casts):
        return None
    parts = [cast or _same(one) for cast, one in zip(casts, value, strict=True)]
    return lambda source, offset, whole: tuple([part(source, offset, whole) for part in parts])


def _record(value: Any, at: int, block: Span) -> Cast | None:
    make, same, parts = type(value), {}, []
    for one in fields(value):
        inside = getattr(value, one.name)
        cast = _cast(inside, at, block)
        if cast is None:
            same[one.name] = inside
        else:
            parts.append((one.name, cast))
    if not parts:
        return None

    def record(source: Source, offset: int, whole: Span) -> Any:
        own = same.copy()
        for name, cast in parts:
            own[name] = cast(source, offset, whole)
        return make(**own)

    return record
