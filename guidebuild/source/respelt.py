"""The edit that mends a misspelt word, where only one thing can have been meant."""

from collections.abc import Iterable

from guidebuild.source.edit import Edit
from guidebuild.source.nearest import meant
from guidebuild.source.span import Span


def respelt(span: Span, word: str, among: Iterable[str]) -> tuple[Edit, ...]:
    """Write the one of `among` that `word` surely means; nothing where it is only likely.

    A likely word is told to the author, who knows; written unasked, `left-screws` might become `lift-screws`.
    """
    sure = meant(word, among)
    return (Edit(span, sure),) if sure else ()
