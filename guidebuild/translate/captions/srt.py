"""SubRip captions (`.srt`) into the same values as WebVTT, so that a publisher's old captions need no other program.

There is no standard; the form is common practice: a number, `00:00:01,000 --> 00:00:02,500`, lines, an empty line. Tags
but `b`, `i`, `u` and places in braces are dropped; `<` that is no tag is text.
"""

import re
from html import escape

from guidebuild.translate.fault import Fault
from guidebuild.translate.webvtt.cue import Captions, Cue

_TIMES = re.compile(
    r"\s*(\d{1,3}):(\d{1,2}):(\d{1,2})[,.](\d{1,3})\s*-->\s*(\d{1,3}):(\d{1,2}):(\d{1,2})[,.](\d{1,3})"
)
_TAG = re.compile(r"<(/?)([a-zA-Z]+)[^<>]*>|\{\\[^{}]*\}")
_KEPT = frozenset("biu")


def read_srt(text: str) -> tuple[Captions, list[Fault]]:
    """The captions, and the blocks that are none: line and what is wrong."""
    lines = text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n").split("\n")
    cues: list[Cue] = []
    faults: list[Fault] = []
    for first, block in _blocks(lines):
        at = 1 if len(block) > 1 and not _TIMES.match(block[0]) else 0
        times = _TIMES.match(block[at]) if at < len(block) else None
        if times is None:
            message = "no times stand here, as in `00:00:01,000 --> 00:00:02,500`"
            faults.append(Fault(first, 1, "times-missing", message))
            continue
        start, end = _stamp(times.groups()[:4]), _stamp(times.groups()[4:])
        name = block[0].strip() if at else ""
        said = "\n".join(filter(None, (_said(line) for line in block[at + 1 :])))
        cues.append(Cue(name, start, end, said, line=first + at))
    return Captions("", (), (), tuple(cues)), faults


def _blocks(lines: list[str]) -> list[tuple[int, list[str]]]:
    """Lines between empty ones, each block with the number of its first line."""
    found: list[tuple[int, list[str]]] = []
    for number, line in enumerate(lines, start=1):
        if not line.strip():
            found.append((number + 1, []))
        elif not found:
            found.append((number, [line]))
        else:
            found[-1][1].append(line)
    return [(number, block) for number, block in found if block]


def _stamp(parts: tuple[str, ...]) -> int:
    hours, minutes, seconds, thousandths = (
        int(part) for part in (*parts[:3], parts[3].ljust(3, "0"))
    )
    return ((hours * 60 + minutes) * 60 + seconds) * 1000 + thousandths


def _said(line: str) -> str:
    """The line as WebVTT has it: plain text escaped, the tags that both have kept."""
    parts: list[str] = []
    done = 0
    for tag in _TAG.finditer(line):
        parts.append(escape(line[done : tag.start()], quote=False))
        name = (tag[2] or "").lower()
        parts.append(f"<{tag[1]}{name}>" if name in _KEPT else "")
        done = tag.end()
    return "".join([*parts, escape(line[done:], quote=False)]).strip()
