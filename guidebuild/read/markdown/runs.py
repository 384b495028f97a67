"""Inline tokens into runs of text."""

from collections.abc import Iterator
from dataclasses import dataclass

from markdown_it.token import Token

from guidebuild.guide.prose import Run
from guidebuild.read.markdown.document import Places
from guidebuild.read.markdown.inline import FROM
from guidebuild.source.said import Said
from guidebuild.source.span import Span

_MARKS = {"strong_open": "strong", "em_open": "emphasis"}


@dataclass(frozen=True, slots=True)
class Image:
    """A picture among the runs, its path as written."""

    file: Said
    alt: Said
    span: Span


def runs(tokens: list[Token], places: Places, size: int) -> list[Run | Image]:
    """The runs of an inline text of `size` characters; pictures stand between them.

    Within a run, text and file agree character by character, except in an escape, an entity and a line
    break, which are runs of their own where they differ in length.
    """
    found: list[Run | Image] = []
    for run in _each(tokens, places, size):
        last = found[-1] if found else None
        if isinstance(run, Run) and isinstance(last, Run) and _goes_on(last, run):
            span = Span(last.span.source, last.span.start, run.span.end)
            found[-1] = Run(last.text + run.text, span, last.marks, last.href)
        else:
            found.append(run)
    return found


def _goes_on(last: Run, run: Run) -> bool:
    return (
        last.marks == run.marks
        and last.href == run.href
        and last.span.end == run.span.start
        and len(last.text) == last.span.end - last.span.start
        and len(run.text) == run.span.end - run.span.start
        and "\n" not in (last.text, run.text)
    )


def _each(tokens: list[Token], places: Places, size: int) -> Iterator[Run | Image]:
    marks: list[str] = []
    hrefs: list[str] = []
    for number, token in enumerate(tokens):
        kind, start = token.type, token.meta.get(FROM, 0)
        if kind in _MARKS:
            marks.append(_MARKS[kind])
        elif kind in ("strong_close", "em_close"):
            marks.pop()
        elif kind == "link_open":
            hrefs.append(str(token.attrs.get("href", "")))
        elif kind == "link_close":
            hrefs.pop()
        else:
            end = tokens[number + 1].meta.get(FROM, size) if number + 1 < len(tokens) else size
            if kind == "image":
                yield _image(token, places, start, end)
            elif text := _text(token):
                end = start + len(text) if kind == "text" else end
                more = {"code"} if kind == "code_inline" else set()
                href = hrefs[-1] if hrefs else None
                yield Run(text, places.span(start, end), frozenset({*marks, *more}), href)


def _text(token: Token) -> str:
    """What the reader sees of a token; comments are left out, other HTML is shown as text."""
    match token.type:
        case "softbreak":
            return " "
        case "hardbreak":
            return "\n"
        case "html_inline" if token.content.startswith("<!--"):
            return ""
        case _:
            return token.content


def _image(token: Token, places: Places, start: int, end: int) -> Image:
    alt = "".join(_text(child) for child in token.children or ())
    path = str(token.attrs.get("src", ""))
    whole = places.span(start, end)
    first = start + len("![")
    alt_span = places.span(first, first + len(token.content)) if token.content else whole
    at = whole.text.rfind(path, len(token.content))
    begin = whole.start + at
    file = Span(whole.source, begin, begin + len(path)) if path and at >= 0 else whole
    return Image(Said(path, file), Said(alt, alt_span), whole)
