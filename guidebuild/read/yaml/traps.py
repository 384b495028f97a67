"""Sentences that YAML would cut or tear apart, found before YAML reads them.

A line of a record or a block is `key: value`, `- value` or the rest of a longer value. What YAML does to
a plain value with ` #`, `: `, a comma in braces or one of its signs in front is hardly ever what was meant.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.read.yaml.flow import flow_end, flow_traps

# Nothing below can happen in a text without one of these: most blocks are not looked at any closer.
_SUSPECT = re.compile(r"[#\"'\[{*&!%@`|>]|:[ \t][^\n]*:(?:[ \t\r]|$)|[:-][ \t]+[-?:,\]}]", re.M)
# Lines that say plain things, with or without a comment: as many of them as follow each other.
_WORD = r"[A-Za-z0-9][\w.-]*"
_LIST = r"\[[^\[\]{}#\"':*&!%@`|>\n]*\]"
_TEXT = r"[^\s#\"'\[\]{}*&!%@`|>?:,-][^#:\n]*|\"[^\"\\\n]*\""
_PLAIN = r"[^\s#\"'\[\]{}*&!%@`|>?:,-][^#:,\[\]{}\"'\n]*|\"[^\"\\\n]*\""
_FLAT = rf"\{{(?:{_WORD}: (?:{_PLAIN}|{_LIST})(?:, |(?=\}})))*\}}"
_MAP = rf"\{{(?:{_WORD}: (?:{_PLAIN}|{_LIST}|{_FLAT})(?:, |(?=\}})))*\}}"
_SAFE_LINES = re.compile(
    rf"(?:[ \t]*(?:- )*(?:{_WORD}:(?: +(?:{_LIST}|{_MAP}|{_TEXT}))?|{_TEXT})?"
    r"[ \t]*(?:(?<!\S)# (?!\d+[ \t]*\n)[^\n]*)?\n)+"
)
_LINE = re.compile(r"[^\n]*\n|[^\n]+")
_LEAD = re.compile(r"[ \t]*(?:-[ \t]+)*")
_KEY = re.compile(
    r"(?:\"[^\"\n]*\"|'[^'\n]*'|[^\s'\"\[\]{}#&*!|>%@`,][^:\n#]*?)[ \t]*:(?=[ \t\r\n]|$)"
)
_BLOCK_TEXT = re.compile(r"[|>][-+0-9]{0,2}[ \t]*(?:#.*)?")
_CUT = re.compile(r"[ \t]#(?=\S)| # (?=\d+\s*$)")
_COMMENT = re.compile(r"[ \t]+#(?:[ \t].*)?$")
_COLON = re.compile(r":(?=[ \t]|$)")
_QUOTED = {'"': re.compile(r'"(?:[^"\\]|\\.)*"', re.S), "'": re.compile(r"'(?:[^']|'')*'", re.S)}


@dataclass(frozen=True, slots=True)
class Trap:
    """From `start` to `end` stands what should be in quotes; `what` is the sign that does the harm."""

    start: int
    end: int
    what: str


def traps(text: str) -> list[Trap]:
    """Every trap in a YAML text, in order."""
    return list(_scan(text)) if _SUSPECT.search(text) else []


def _scan(text: str) -> Iterator[Trap]:
    at, size = 0, len(text)
    while at < size:
        safe = _SAFE_LINES.match(text, at)
        if safe is not None and (at := safe.end()) >= size:
            return
        line = _LINE.match(text, at)
        assert line is not None  # at < size
        lead = _LEAD.match(text, at)
        assert lead is not None  # matches nothing, too
        start, end = lead.end(), line.start() + len(line.group().rstrip())
        key = _KEY.match(text, start, line.end())
        if key and start > at and " " in key.group() and "-" in lead.group():
            key = None  # `- Keep clear: hot`: a sentence in a list, no key of ours has spaces
        value = _skip_blank(text, key.end() if key else start, end)
        if value >= end or (text[value] == "#" and not key):
            at = line.end()
            continue
        indent = lead.end() if key else lead.end() - 1
        at = line.end()
        found, after = _value(text, value, end, at, bool(key), _column(text, indent))
        yield from found
        at = max(at, after)


def _skip_blank(text: str, at: int, end: int) -> int:
    while at < end and text[at] in " \t":
        at += 1
    return at


def _column(text: str, at: int) -> int:
    return at - (text.rfind("\n", 0, at) + 1)


def _value(
    text: str, start: int, end: int, next_line: int, has_key: bool, indent: int
) -> tuple[list[Trap], int]:
    """The traps of the value that begins at `start`, and where scanning goes on (0: the next line)."""
    first = text[start]
    if first in "[{":
        return _flow(text, start, end)
    if first in "\"'":
        return _quoted(text, start, end)
    if first in "|>":
        if _BLOCK_TEXT.fullmatch(text, start, end):
            return [], _after_indented(text, next_line, indent)
        return [_whole(text, start, end, first)], 0
    if first == "#":
        hides = text[start + 1 : start + 2].strip() and not _deeper(text, next_line, indent)
        return ([Trap(start, end, "`#`")] if hides else []), 0
    if first in "*&" and _anchor(text, start, end):
        return [], 0
    if first in "*&!%@`,]}" or (first in "-?:" and has_key and text[start + 1 : start + 2] in " "):
        return [_whole(text, start, end, first)], 0
    return _plain(text, start, end), 0


def _whole(text: str, start: int, end: int, sign: str) -> Trap:
    comment = _COMMENT.search(text, start, end)
    return Trap(start, comment.start() if comment else end, f"`{sign}` at its beginning")


def _plain(text: str, start: int, end: int) -> list[Trap]:
    cut = _CUT.search(text, start, end)
    if cut:
        return [Trap(start, end, "` #`")]
    comment = _COMMENT.search(text, start, end)
    end = comment.start() if comment else end
    colon = _COLON.search(text, start, end)
    return [Trap(start, end, "`: `")] if colon else []


def _flow(text: str, start: int, end: int) -> tuple[list[Trap], int]:
    close = flow_end(text, start)
    if close is None:
        return [], 0  # YAML itself will say that a bracket is not closed
    line_end = text.find("\n", close)
    line_end = len(text) if line_end < 0 else line_end
    rest = text[close:line_end].strip()
    if rest and not rest.startswith("#"):
        return [_whole(text, start, min(line_end, max(end, close)), text[start])], line_end
    found = [Trap(*one) for one in flow_traps(text, start, close)]
    return found, line_end


def _quoted(text: str, start: int, end: int) -> tuple[list[Trap], int]:
    closing = _QUOTED[text[start]].match(text, start)
    if closing is None:
        return [], 0
    line_end = text.find("\n", closing.end())
    line_end = len(text) if line_end < 0 else line_end
    rest = text[closing.end() : line_end].strip()
    if not rest or rest.startswith(("#", ":")):
        return [], line_end
    if closing.end() > end:
        return [], 0
    return [_whole(text, start, end, text[start])], 0


def _anchor(text: str, start: int, end: int) -> bool:
    """A lone alias whose anchor exists, or an anchor that an alias uses."""
    word = re.compile(r"[*&]([\w-]+)(?=\s|$)").match(text, start, end)
    if word is None:
        return False
    other = ("&" if text[start] == "*" else "*") + word[1]
    alone = text[start] == "&" or not text[word.end() : end].strip()
    return alone and re.search(re.escape(other) + r"(?![\w-])", text) is not None


def _after_indented(text: str, at: int, indent: int) -> int:
    """The end of the lines that are blank or indented deeper."""
    while at < len(text):
        line = _LINE.match(text, at)
        assert line is not None  # at < len(text)
        body = line.group()
        if body.strip() and len(body) - len(body.lstrip(" \t")) <= indent:
            break
        at = line.end()
    return at


def _deeper(text: str, at: int, indent: int) -> bool:
    """Whether the next line that says anything belongs under this key."""
    while at < len(text):
        line = _LINE.match(text, at)
        assert line is not None  # at < len(text)
        body = line.group()
        if body.strip() and not body.lstrip().startswith("#"):
            own = len(body) - len(body.lstrip(" \t"))
            return own > indent or (own == indent and body.lstrip().startswith("- "))
        at = line.end()
    return False
