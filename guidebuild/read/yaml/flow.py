"""Lists and maps in brackets: where they end, and which commas and colons in them cut a sentence."""

import re
from collections.abc import Iterator

_TOKEN = re.compile(
    r"\"(?:[^\"\\]|\\.)*\"|'(?:[^']|'')*'|[\[\]{},]|:(?=[\s,\]}])|(?<=\s)#|[^\[\]{},:\s\"'#]+|\s+|.",
    re.S,
)


def flow_end(text: str, start: int, depth: int = 0) -> int | None:
    """The offset after the bracket that closes the one at `start`, or None; `depth` are open already."""
    for token in _TOKEN.finditer(text, start):
        match token.group():
            case "[" | "{":
                depth += 1
            case "]" | "}":
                depth -= 1
                if depth == 0:
                    return token.end()
            case "#":
                return _past_comment(text, token.start(), depth)
            case _:
                pass
    return None


def _past_comment(text: str, hash_at: int, depth: int) -> int | None:
    """A ` #` inside brackets: a comment if the bracket goes on below, else it swallows the bracket."""
    line_end = text.find("\n", hash_at)
    line_end = len(text) if line_end < 0 else line_end
    closing = max(text.rfind("}", hash_at, line_end), text.rfind("]", hash_at, line_end))
    if closing >= 0:
        return closing + 1
    return flow_end(text, line_end, depth)


def flow_traps(text: str, start: int, end: int) -> Iterator[tuple[int, int, str]]:
    """(start, end, sign) of each value in the brackets that YAML would cut."""
    pieces = list(_pieces(text, start, end))
    skip = -1
    for number, (open_, first, last, colons) in enumerate(pieces):
        if number <= skip or first >= last:
            continue
        value = colons[0] + 1 if colons and open_[0] == "{" else first
        value += len(text[value:last]) - len(text[value:last].lstrip())
        cut = re.compile(r"(?<=\s)#").search(text, value, last)
        if cut and not text[cut.end() : cut.end() + 1].isspace():
            yield value, last, "` #`"
        elif len(colons) > (open_[0] == "{"):
            yield value, last, "`: `"
        elif value < last and text[value] in "*&!%@`|>" and not _alias(text, value, last):
            yield value, last, f"`{text[value]}` at its beginning"
        elif open_ == "{" and colons and value < last:
            skip = _swallowed(pieces, number)
            if skip > number:
                yield value, pieces[skip][2], "the comma"


def _swallowed(pieces: list[tuple[str, int, int, list[int]]], number: int) -> int:
    """The last of the pieces after this one that have no colon: torn off by a comma."""
    last = number
    while (
        last + 1 < len(pieces)
        and pieces[last + 1][0] == "{,"
        and not pieces[last + 1][3]
        and pieces[last + 1][1] < pieces[last + 1][2]
    ):
        last += 1
    return last


def _alias(text: str, start: int, end: int) -> bool:
    return (
        bool(re.fullmatch(r"[*&][\w-]+", text[start:end]))
        and text[start] in "*&"
        and (("&" if text[start] == "*" else "*") + text[start + 1 : end] in text)
    )


def _pieces(text: str, start: int, end: int) -> Iterator[tuple[str, int, int, list[int]]]:
    """(bracket, first, last, colons) of each entry that is not itself in brackets.

    The bracket reads `{,` for an entry that follows a comma directly after a plain entry of the same map.
    """
    stack: list[str] = []
    colons: list[int] = []
    first, last, mark = -1, -1, ""
    for token in _TOKEN.finditer(text, start, end):
        word = token.group()
        if word in "[{" or word in "]}" or word == ",":
            if stack and first >= 0:
                yield mark or stack[-1], first, last, colons
            follows = word == "," and first >= 0 and stack and stack[-1] == "{"
            mark = "{," if follows else ""
            first, last, colons = -1, -1, []
            if word in "[{":
                stack.append(word)
            elif word != "," and stack:
                stack.pop()
        elif not word.isspace():
            first = token.start() if first < 0 else first
            last = token.end()
            if word == ":" and (text[last : last + 1] in ",]}" or text[last].isspace()):
                colons.append(token.start())
