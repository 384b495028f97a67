"""Paragraphs, lists and quotations out of markdown-it's tokens."""

from collections.abc import Iterator
from dataclasses import replace
from urllib.parse import unquote

from markdown_it.token import Token

from guidebuild.guide.prose import Bullets, Paragraph, Prose, Quote, Run
from guidebuild.read.markdown.document import Document
from guidebuild.read.markdown.runs import Image, runs
from guidebuild.source.said import Said
from guidebuild.source.span import Span


def matching(tokens: list[Token], at: int) -> int:
    """The index of the token that closes the one at `at` (itself where nothing is opened)."""
    if tokens[at].nesting != 1:
        return at
    level = tokens[at].level
    while tokens[at].nesting != -1 or tokens[at].level != level:
        at += 1
    return at


def prose(document: Document, tokens: list[Token]) -> Iterator[Prose | Image]:
    """The prose in a stretch of block tokens; pictures stand after the paragraph or list they are in."""
    at = 0
    while at < len(tokens):
        token, end = tokens[at], matching(tokens, at)
        inside = tokens[at + 1 : end]
        match token.type:
            case "paragraph_open" | "heading_open":
                yield from paragraph(document, inside[0])
            case "bullet_list_open" | "ordered_list_open":
                yield from _bullets(document, token, inside)
            case "blockquote_open":
                yield from _quote(document, token, inside)
            case "html_block":
                yield from plain(document, token, without_comments(token.content), frozenset())
            case "code_block" | "fence":
                yield from plain(document, token, token.content, frozenset({"code"}))
            case _:
                pass
        at = end + 1


def paragraph(document: Document, inline: Token) -> Iterator[Paragraph | Image]:
    """A paragraph in its parts: text between pictures, and the pictures."""
    children, places = document.inline(inline)
    waiting: list[Run] = []
    for run in runs(children, places, len(inline.content)):
        if isinstance(run, Image):
            yield from _as_paragraph(waiting)
            waiting = []
            yield run
        else:
            waiting.append(run)
    yield from _as_paragraph(waiting)


def _as_paragraph(found: list[Run]) -> Iterator[Paragraph]:
    while found and not found[0].text.strip():
        found = found[1:]
    while found and not found[-1].text.strip():
        found = found[:-1]
    if found:
        first, last = found[0].span, found[-1].span
        yield Paragraph(tuple(found), Span(first.source, first.start, last.end))


def plain(
    document: Document, token: Token, text: str, marks: frozenset[str]
) -> Iterator[Paragraph]:
    """A block that is shown as it stands."""
    shown = text.strip("\n")
    if shown.strip():
        span = document.lines(token)
        yield Paragraph((Run(shown, span, marks),), span)


def _bullets(document: Document, token: Token, inside: list[Token]) -> Iterator[Prose | Image]:
    items: list[tuple[Prose, ...]] = []
    images: list[Image] = []
    at = 0
    while at < len(inside):
        end = matching(inside, at)
        found = list(prose(document, inside[at + 1 : end]))
        items.append(tuple(one for one in found if not isinstance(one, Image)))
        images += [one for one in found if isinstance(one, Image)]
        at = end + 1
    ordered = token.type == "ordered_list_open"
    yield Bullets(ordered, tuple(items), document.lines(token))
    yield from images


def _quote(document: Document, token: Token, inside: list[Token]) -> Iterator[Prose | Image]:
    found = list(prose(document, inside))
    text = tuple(one for one in found if not isinstance(one, Image))
    yield Quote(text, document.lines(token))
    yield from (one for one in found if isinstance(one, Image))


def without_comments(text: str) -> str:
    """HTML as it stands, but for what is between `<!--` and `-->`."""
    kept: list[str] = []
    at = 0
    while (start := text.find("<!--", at)) >= 0 and (end := text.find("-->", start + 4)) >= 0:
        kept.append(text[at:start])
        at = end + len("-->")
    return "".join(kept) + text[at:]


def path_of(image: Image) -> Said:
    """The picture's path as the disk knows it: `%20` is a space."""
    return replace(image.file, text=unquote(image.file.text))
