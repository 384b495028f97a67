"""The usual lines of a guide cut without a Markdown parser, and all others given to it.

Most of a guide is headings, typed blocks at the margin and paragraphs of plain words. What CommonMark makes of
these is known at their first characters, and a parser that must reckon with everything takes ten times as long.
Nothing is decided here that CommonMark decides otherwise; the tests hold the two against each other.
"""

import re
from collections.abc import Iterator

from guidebuild.guide.prose import Paragraph, Run
from guidebuild.read.guide.pieces import Fence, Heading, Piece, pieces
from guidebuild.read.markdown.document import Document
from guidebuild.read.markdown.fences import closed
from guidebuild.read.report import Report
from guidebuild.read.shape.schema import block_names
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source

_WORDS = r"[^\n\\`*_\[<&]"  # no inline rule of CommonMark begins without one of these
# A line that can only be text: not indented, no sign of a list, a quotation, a rule or a heading in front, no
# white space behind, which may break the line.
_LINE = rf"""(?:[^\W\d_]|["'(]|[0-9](?![0-9]{{0,8}}[.)]))(?:{_WORDS}*[^\s\\`*_\[<&])?\n"""
_USUAL = re.compile(
    r"(?:"
    rf"(?P<level>\#{{1,6}})[ ]+(?P<title>[^\s\\`*_\[<&#](?:[^\n\\`*_\[<&#]*[^\s\\`*_\[<&#])?)[ ]*\n"
    r"|```(?P<name>[a-z][a-z-]*)[ ]*\n(?P<body>(?:(?![ ]{0,3}(?:```|~~~))[^\n]*\n)*)(?P<close>```)[ ]*\n"
    rf"|(?P<text>(?:{_LINE})+)(?=[ \t]*\n|\#{{1,6}}[ ]|```[a-z]|\Z)"
    r"|[ \t]*\n)(?:[ \t]*\n)*"
)
# What is not usual ends at the latest where a line at the margin follows a blank one: no list and no quotation
# goes on there. A fence or a piece of HTML does; then everything from there on is the parser's.
_NEXT = re.compile(r"\n[ \t]*\n(?=[^\W\d_]|\#{1,6}[ ]|```[a-z])")
_GOES_ON = re.compile(r"^ {0,3}(?:```|~~~|<)", re.M)


def usual_pieces(source: Source, start: int, report: Report) -> Iterator[Piece]:
    """All that stands in a file from `start` on, as `pieces` of a Document would have it."""
    text = source.text
    at, size = start, len(text)
    if "\r" in text or "\0" in text or "]:" in text:  # a link may be defined far from its use
        yield from _parsed(source, at, report)
        return
    while at < size:
        found = _USUAL.match(text, at)
        if found is not None:
            at = found.end()
            if found.lastgroup is not None:  # not blank lines
                yield _usual(source, found)
            continue
        after = _NEXT.search(text, at)
        end = after.end() if after else size
        if _GOES_ON.search(text, at, end):
            yield from _parsed(source, at, report)
            return
        yield from pieces(Document(source, at, text[at:end]))
        at = end


def _parsed(source: Source, start: int, report: Report) -> Iterator[Piece]:
    return pieces(Document(source, start, closed(source, start, block_names(), report)))


def _usual(source: Source, found: re.Match[str]) -> Piece:
    start = found.start()
    if found.lastgroup == "text":
        span = Span(source, start, found.end("text") - 1)
        words = found["text"][:-1].replace("\n", " ")
        return Paragraph((Run(words, span),), span)
    if found.lastgroup == "close":
        name = Said(found["name"], Span(source, *found.span("name")))
        body, end = found.span("body")
        return Fence(name, body, end, Span(source, start, found.end("close")))
    title, end = found.span("title")
    heading = Said(found["title"], Span(source, title, end))
    return Heading(len(found["level"]), heading, None, Span(source, start, end))
