"""Marks inside a sentence as numbered codes: `Lift the <1>plate</1>.` A translator moves them, never edits them.

Source: the form that a general toolkit's `xmltags` check knows; measured in the reference on localisation.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from guidebuild.guide.prose import Run
from guidebuild.source.span import Span

_TOKEN = re.compile(r"<(/?)(\d+)(/?)>|&(lt|amp);|([^<&]+|[<&])")


@dataclass(frozen=True, slots=True)
class Code:
    """What a number stands for: the marks and the link of a run, or a hard line break."""

    marks: frozenset[str]
    href: str | None
    is_break: bool = False


@dataclass(frozen=True, slots=True)
class Coded:
    """A sentence as a translator sees it, and what each number (from 1) stands for."""

    text: str
    codes: tuple[Code, ...] = ()


def escaped(text: str) -> str:
    """Text that has no codes in it."""
    return text.replace("&", "&amp;").replace("<", "&lt;")


def encoded(runs: Sequence[Run]) -> Coded:
    """Runs as text with codes; plain runs have none."""
    parts: list[str] = []
    codes: list[Code] = []
    for run in runs:
        if run.text == "\n":
            codes.append(Code(frozenset(), None, is_break=True))
            parts.append(f"<{len(codes)}/>")
        elif run.marks or run.href is not None:
            codes.append(Code(run.marks, run.href))
            parts.append(f"<{len(codes)}>{escaped(run.text)}</{len(codes)}>")
        else:
            parts.append(escaped(run.text))
    return Coded("".join(parts), tuple(codes))


def numbers_in(text: str) -> list[str]:
    """The codes of a text, `<1>`, `</1>` and `<2/>`, in order."""
    return [found[0] for found in _TOKEN.finditer(text) if found[2]]


def decoded(text: str, codes: Sequence[Code], span: Span) -> tuple[Run, ...] | None:
    """A translation as runs that stand for the source at `span`; None where its codes are lost or crossed."""
    runs: list[Run] = []
    open_: list[int] = []
    used: list[int] = []
    for found in _TOKEN.finditer(text):
        closing, number, alone, entity, plain = found.groups()
        if number is None:
            runs.append(_run({"lt": "<", "amp": "&"}.get(entity, plain), open_, codes, span))
            continue
        which = int(number) - 1
        if not 0 <= which < len(codes) or bool(alone) != codes[which].is_break:
            return None
        if alone:
            runs.append(Run("\n", span))
            used.append(which)
        elif not closing:
            open_.append(which)
            used.append(which)
        elif not open_ or open_.pop() != which:
            return None
    if open_ or sorted(used) != list(range(len(codes))):
        return None
    return _joined(runs)


def _run(text: str, open_: Sequence[int], codes: Sequence[Code], span: Span) -> Run:
    marks = frozenset(mark for which in open_ for mark in codes[which].marks)
    links = [codes[which].href for which in open_ if codes[which].href is not None]
    return Run(text, span, marks, links[-1] if links else None)


def _joined(runs: Sequence[Run]) -> tuple[Run, ...]:
    """Neighbours under the same marks as one run."""
    joined: list[Run] = []
    for run in runs:
        last = joined[-1] if joined else None
        alike = last is not None and (last.marks, last.href) == (run.marks, run.href)
        if last is not None and alike and "\n" not in (run.text, last.text):
            joined[-1] = Run(last.text + run.text, run.span, run.marks, run.href)
        else:
            joined.append(run)
    return tuple(joined)
