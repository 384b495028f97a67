"""What stands in a Markdown body one after the other: headings, typed blocks, breaks, prose, pictures."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TypeAlias

from markdown_it.token import Token

from guidebuild.guide.prose import Prose
from guidebuild.read.markdown.document import Document
from guidebuild.read.markdown.prose import matching, prose
from guidebuild.read.markdown.runs import Image, runs
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Heading:
    """`link`: the path that the whole heading leads to. `line`: with its signs."""

    level: int
    title: Said
    link: Said | None
    line: Span


@dataclass(frozen=True, slots=True)
class Fence:
    """A fenced block: its name, and where its body stands (offsets)."""

    name: Said
    start: int
    end: int
    span: Span
    at_margin: bool = True


@dataclass(frozen=True, slots=True)
class Break:
    """A `***` line."""

    span: Span


Piece: TypeAlias = Heading | Fence | Break | Prose | Image


def pieces(document: Document) -> Iterator[Piece]:
    """All that Markdown makes of a text, in order."""
    tokens = document.tokens
    at = 0
    while at < len(tokens):
        token, end = tokens[at], matching(tokens, at)
        match token.type:
            case "heading_open":
                yield _heading(document, token, tokens[at + 1])
            case "fence" if token.info.strip():
                yield _fence(document, token)
            case "hr":
                yield Break(document.lines(token))
            case _:
                yield from prose(document, tokens[at : end + 1])
                yield from _strays(document, tokens[at : end + 1])
        at = end + 1


def _strays(document: Document, tokens: list[Token]) -> Iterator[Fence]:
    """Named blocks inside a list or a quotation, where they can't be done."""
    for token in tokens:
        if token.type == "fence" and token.level > 0 and token.info.strip():
            yield _fence(document, token, at_margin=False)


def _fence(document: Document, token: Token, at_margin: bool = True) -> Fence:
    first, after = token.map or (0, 1)
    name, source = token.info.strip(), document.source
    start, body, closing = (
        document.start(first),
        document.start(first + 1),
        document.start(after - 1),
    )
    signs = source.text.find(token.markup, start, body) + len(token.markup)
    at = max(source.text.find(name, signs, body), start)
    last = source.text[closing : document.end(after - 1)].strip("> \t")
    closed = closing > start and last.startswith(token.markup)
    end = closing if closed else document.start(after)
    said = Said(name, Span(source, at, min(at + len(name), body)))
    return Fence(said, body, max(body, end), document.lines(token), at_margin)


def _heading(document: Document, token: Token, inline: Token) -> Heading:
    children, places = document.inline(inline)
    found = runs(children, places, len(inline.content))
    text = "".join(run.alt.text if isinstance(run, Image) else run.text for run in found).strip()
    line = document.lines(token)
    span = line
    if found:
        span = Span(line.source, found[0].span.start, found[-1].span.end)
    links = {None if isinstance(run, Image) else run.href for run in found}
    link = next(iter(links)) if len(links) == 1 else None
    return Heading(int(token.tag[1]), Said(text, span), _linked(link, line), line)


def _linked(link: str | None, line: Span) -> Said | None:
    if link is None:
        return None
    at = line.text.rfind(link)
    if at < 0:
        return Said(link, line)
    return Said(link, Span(line.source, line.start + at, line.start + at + len(link)))
