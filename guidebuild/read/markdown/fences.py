"""Blocks that are opened and not closed, found before Markdown reads on inside them."""

import re
from collections.abc import Container

from guidebuild.read.faults import fence_not_closed
from guidebuild.read.report import Report
from guidebuild.source.edit import Edit
from guidebuild.source.span import Span
from guidebuild.source.text import Source

_FENCE = re.compile(r"^ {0,3}(`{3,}|~{3,})[ \t]*([^\n`]*?)[ \t\r]*$", re.M)
_BLANK = re.compile(r"^[ \t\r]*\n", re.M)
_NEXT = re.compile(r"^(?:[ \t\r]*\n|#{1,3} )", re.M)
_COMMENT = re.compile(r"^ {0,3}<!--(?!>|->)", re.M)


def closed(source: Source, start: int, names: Container[str], report: Report) -> str:
    """The Markdown from `start` on, with a fence put where an author forgot one.

    It stands on a blank line, so that all lines keep their number. Told at the line that opens the block.
    """
    text = _comment_closed(source, start, source.text[start:], report)
    at = 0
    while opening := _FENCE.search(text, at):
        close = _closing(text, opening, names)
        if close is None:
            text, at = _mend(source, start, text, opening, report)
        else:
            at = close
    return text


def _comment_closed(source: Source, start: int, text: str, report: Report) -> str:
    """The text, in which a comment that is never closed is plain text: it would hide all that follows."""
    open_ = _COMMENT.search(text, text.rfind("-->") + 3 if "-->" in text else 0)
    if open_ is None:
        return text
    at = open_.end() - len("<!--")
    span = Span(source, start + at, start + open_.end())
    end = Span(source, start + len(text.rstrip()), start + len(text.rstrip()))
    do = "put `-->` after its last word"
    report.tell(fence_not_closed, span, edits=(Edit(end, " -->"),), what="a comment", do=do)
    return text[:at] + r"\<!-" + text[open_.end() :]


def _closing(text: str, opening: re.Match[str], names: Container[str]) -> int | None:
    """The offset after the block's closing line, or None where another block opens before it."""
    at = opening.end()
    typed = opening[2] in names
    while line := _FENCE.search(text, at):
        if line[1].startswith(opening[1]) and not line[2]:
            return line.end()
        if typed and line[2] in names:
            return None
        at = line.end()
    return None


def _mend(
    source: Source, start: int, text: str, opening: re.Match[str], report: Report
) -> tuple[str, int]:
    next_fence = _FENCE.search(text, opening.end())
    limit = next_fence.start() if next_fence else len(text)
    start -= len(text) - (len(source.text) - start)  # fences put in before this one
    gap = _NEXT.search(text, opening.end() + 1, limit)
    begin, end = start + opening.start(1), start + opening.end(2)
    at = min(start + (gap.start() if gap else limit), len(source.text))
    line = "" if source.text[at - 1 : at] in ("\n", "") else "\n"
    name = f"the `{opening[2]}` block" if opening[2] else "a block"
    report.tell(
        fence_not_closed,
        Span(source, begin, end),
        lost=False,
        edits=(Edit(Span(source, at, at), f"{line}{opening[1]}\n"),),
        what=name,
        do=f"put a line of `{opening[1]}` after its last line",
    )
    report.excuse(Span(source, start + opening.end(), start + limit))
    return _put(text, opening[1], gap, limit)


def _put(text: str, fence: str, gap: re.Match[str] | None, limit: int) -> tuple[str, int]:
    """The text with a closing fence in it, and the offset after that."""
    if gap is not None and not gap.group().strip():
        return text[: gap.start()] + fence + "\n" + text[gap.end() :], gap.start() + len(fence)
    if limit >= len(text) and gap is None:
        return text + ("" if text.endswith("\n") else "\n") + fence, len(text) + len(fence) + 1
    return text, gap.start() if gap else limit
