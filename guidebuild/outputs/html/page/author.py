"""The author's sentences as pieces: marks kept, quantities kept together, and what is no fresh translation."""

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace

from guidebuild.guide import prose
from guidebuild.guide.language.words import tokens
from guidebuild.outputs.html.page.prose import Block, Bullets, Paragraph, Quote
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.translate.catalogue.apply import Shown, Stale
from guidebuild.translate.messages.text import Age, Mark, Piece, Text

_ANGLE = re.compile(r"[ \u00a0](?=[°′″]$)")  # an angle has no space before its sign
_MARKS = {"strong": Mark.STRONG, "emphasis": Mark.EMPHASIS, "code": Mark.CODE}
_AGES = {Shown.MISSING: Age.MISSING, Shown.OUTDATED: Age.BEHIND, Shown.SOURCE_FIRST: Age.SOURCE}


class Author:
    """`stale`: what is no fresh translation, by its place in the source, whose language is `source`.

    `link` says where an author's link leads, None where it is only words.
    """

    def __init__(
        self, stale: Mapping[Span, Stale], source: str, link: Callable[[str], str | None]
    ) -> None:
        self._link = link
        self._stale = {span.sort_key: stale for span, stale in stale.items()}
        self._source = source

    def words(self, said: Said | None) -> Text:
        """A sentence of the author's in a block of YAML, a title, a name."""
        if said is None:
            return ()
        return self._aged(tuple(_quantities(said.text, Mark.PLAIN, None)), said.span, last=True)

    def outdated(self, said: Said) -> Stale | None:
        """What is to be told of a name whose translation is shown though its source went on."""
        stale = self._stale.get(said.span.sort_key)
        return stale if stale is not None and stale.shown is Shown.OUTDATED else None

    def block(self, one: prose.Prose) -> Block:
        """A block of prose."""
        match one:
            case prose.Paragraph():
                return Paragraph(tuple(self._runs(one)))
            case prose.Bullets():
                items = tuple(tuple(self.block(inner) for inner in item) for item in one.items)
                return Bullets(one.ordered, items)
            case prose.Quote():
                return Quote(tuple(self.block(inner) for inner in one.inside))

    def _runs(self, paragraph: prose.Paragraph) -> Iterator[Piece]:
        keys = [self._key(run.span) for run in paragraph.runs] + [None]
        for n, run in enumerate(paragraph.runs):
            yield from self._aged(tuple(self._run(run)), run.span, last=keys[n + 1] != keys[n])

    def _key(self, span: Span) -> tuple[str, int, int] | None:
        """The stale sentence that a place is in, if it is in one."""
        if not self._stale:
            return None
        path, start, end = span.sort_key
        if span.sort_key in self._stale:
            return span.sort_key
        around = (
            key for key in self._stale if key[0] == path and key[1] <= start and end <= key[2]
        )
        return next(around, None)

    def _aged(self, pieces: Text, span: Span, last: bool) -> Text:
        """The pieces marked with their age; behind the last of a source's sentence, the old translation."""
        key = self._key(span)
        if key is None:
            return pieces
        stale = self._stale[key]
        age = _AGES[stale.shown]
        language = None if age is Age.BEHIND else self._source
        marked = tuple(replace(piece, age=age, language=language) for piece in pieces)
        was = (Piece(stale.old, age=Age.WAS),) if age is Age.SOURCE and last and stale.old else ()
        return (*marked, *was)

    def _run(self, run: prose.Run) -> Iterator[Piece]:
        if run.text == "\n":
            yield Piece("", Mark.BREAK)
            return
        mark = next((_MARKS[name] for name in _MARKS if name in run.marks), Mark.PLAIN)
        yield from _quantities(run.text, mark, self._link(run.href) if run.href else None)


def _quantities(said: str, mark: Mark, href: str | None) -> Iterator[Piece]:
    """`5 mm` in a sentence is a piece of its own; marked words stay whole."""
    if mark is not Mark.PLAIN or href is not None:
        yield Piece(said, mark, href)
        return
    done = 0
    for kind, found, start, end in tokens(said):
        if kind == "quantity":
            if start > done:
                yield Piece(said[done:start])
            yield Piece(_ANGLE.sub("", found).replace(" ", "\u00a0"), Mark.QUANTITY)
            done = end
    if done < len(said):
        yield Piece(said[done:])
