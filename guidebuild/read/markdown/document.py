"""A Markdown text parsed into blocks, and the way from their lines and runs back into the file."""

import re
from bisect import bisect_right
from functools import cached_property
from typing import Any

from markdown_it.token import Token

from guidebuild.read.markdown.inline import FROM, markdown
from guidebuild.source.span import Span
from guidebuild.source.text import Source

_LINE_ENDS = re.compile(r"\r\n?|\n")
_MARKED = re.compile(r"[\\`*_\[<&\n]")  # no inline rule of CommonMark begins without one of these
_PARSER = markdown()
PLAIN_FROM = 30_000  # characters of one paragraph from which it is taken as plain text


class Document:
    """The Markdown of a file, from the offset `body` on; `text` may have a fence more than the file."""

    def __init__(self, source: Source, body: int, text: str) -> None:
        self.source = source
        self.body = body
        self.env: dict[str, Any] = {}
        self.tokens: list[Token] = []
        plain = text.replace("\r\n", "\n").replace("\r", "\n") if "\r" in text else text
        plain = plain.replace("\0", "\N{REPLACEMENT CHARACTER}") if "\0" in plain else plain
        _PARSER.block.parse(plain, _PARSER, self.env, self.tokens)

    @cached_property
    def starts(self) -> list[int]:
        """Offset in the file of each line of the Markdown, as Markdown counts lines, and of its end."""
        text = self.source.text
        if "\r" not in text:
            all_starts = self.source.line_starts
            return [*all_starts[bisect_right(all_starts, self.body) - 1 :], len(text)]
        ends = [found.end() for found in _LINE_ENDS.finditer(text, self.body)]
        return [self.body, *ends, len(text)]

    def start(self, number: int) -> int:
        """Offset of a line's first character; of the file's end past the last line."""
        starts = self.starts
        return starts[number] if number < len(starts) else starts[-1]

    def end(self, number: int) -> int:
        """Offset after a line's last non-blank character, or of its start if it has none."""
        start, end, text = self.start(number), self.start(number + 1), self.source.text
        while end > start and text[end - 1].isspace():
            end -= 1
        return end

    def lines(self, token: Token) -> Span:
        """The lines of a block, from its first to after its last non-blank character."""
        first, after = token.map or (0, 0)
        start, text = self.start(first), self.source.text
        end = self.end(max(after - 1, first))
        while end <= start and after - 1 > first:  # blank lines at the end of a list item
            after -= 1
            end = self.end(after - 1)
        while start < end and text[start].isspace():
            start += 1
        return Span(self.source, start, end)

    def inline(self, token: Token) -> tuple[list[Token], "Places"]:
        """The inline tokens of a block's text, and where they stand."""
        children: list[Token] = []
        if len(token.content) > PLAIN_FROM or not _MARKED.search(token.content):
            text = token.content.replace("\n", " ")
            children.append(Token("text", "", 0, content=text, meta={FROM: 0}))
        else:
            _PARSER.inline.parse(token.content, _PARSER, self.env, children)
        return children, Places(self, token)


class Places:
    """From an offset in a block's inline text to an offset in the file."""

    __slots__ = ("_from", "_to", "source")

    def __init__(self, document: Document, token: Token) -> None:
        self.source = document.source
        self._from: list[int] = []
        self._to: list[int] = []
        first = token.map[0] if token.map else 0
        at = 0
        for number, line in enumerate(token.content.split("\n"), first):
            self._from.append(at)
            start, end = document.start(number), document.start(number + 1)
            self._to.append(_find(document.source.text, line, start, end))
            at += len(line) + 1

    def offset(self, at: int) -> int:
        """The offset in the file."""
        line = bisect_right(self._from, at) - 1 if len(self._from) > 1 else 0
        return self._to[line] + at - self._from[line]

    def span(self, start: int, end: int) -> Span:
        """From one offset to another; never longer than the file."""
        last = len(self.source.text)
        begin = min(self.offset(start), last)
        return Span(self.source, begin, max(begin, min(self.offset(end - 1) + 1, last)))


def _find(text: str, line: str, start: int, end: int) -> int:
    """Where a line's inline text begins in the line: what was cut off in front is indentation and markers."""
    found = text.rfind(line.strip(), start, end)
    if found < 0:
        return start
    return found - (len(line) - len(line.lstrip())) if found > start else found
