"""The author's line with the span set off by a mark of our own."""

from guidebuild.reports.parts.wrap import columns
from guidebuild.source.span import Span

LEAST = 24  # characters of a line that are always shown, however narrow the terminal


def visible(text: str) -> str:
    """The text with what a terminal or an XML file must not get (control characters) made visible."""
    return "".join(char if _harmless(char) else "\N{REPLACEMENT CHARACTER}" for char in text)


def _harmless(char: str) -> bool:
    code = ord(char)
    if code < 0x20 or 0x7F <= code <= 0x9F:
        return False
    # Lone halves of pairs, the two non-characters, and signs that turn the reading direction of what follows.
    return not (
        0xD800 <= code <= 0xDFFF
        or code in (0xFFFE, 0xFFFF)
        or 0x202A <= code <= 0x202E
        or 0x2066 <= code <= 0x2069
    )


def parts(span: Span) -> tuple[str, str, str]:
    """Of the span's first line: what stands before it, in it, and after it; outer blanks are dropped."""
    line = span.source.line(span.line)
    start = min(span.column - 1, len(line))
    end = min(start + (span.end - span.start), len(line))
    before, inside, after = line[:start], line[start:end], line[end:]
    clean = [piece.replace("\t", " ") for piece in (before.lstrip(), inside, after.rstrip())]
    return visible(clean[0]), visible(clean[1]), visible(clean[2])


def window(span: Span, width: int) -> tuple[str, str, str]:
    """`parts`, shortened with an ellipsis so that they fit `width` columns with the span in sight."""
    before, inside, after = parts(span)
    room = max(width, LEAST)
    if columns(before + inside + after) <= room:
        return before, inside, after
    inside = _head(inside, room)
    side = (room - columns(inside)) // 2
    shown_after = _head(after, max(side, room - columns(inside) - columns(before)))
    return _tail(before, room - columns(inside + shown_after)), inside, shown_after


def _head(text: str, room: int) -> str:
    """The start of a text in `room` columns."""
    if columns(text) <= room:
        return text
    while text and columns(text) + 1 > room:
        text = text[: max(0, min(len(text) - 1, room - 1))]
    return f"{text}…" if room > 0 else ""


def _tail(text: str, room: int) -> str:
    """The end of a text in `room` columns."""
    return _head(text[::-1], room)[::-1]
