"""Slips to work through at the bench: a card a finding, the author's own line with the span set off.

A tear line with number, loudness and rule; then labelled lines; the last has a box to tick.
"""

import re

from guidebuild.reports.parts import words
from guidebuild.reports.parts.look import Look, Paint
from guidebuild.reports.parts.quote import visible, window
from guidebuild.reports.parts.report import Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.reports.parts.wrap import columns, wrap
from guidebuild.source.finding import Loudness, Related
from guidebuild.source.span import Span

LABEL = 9  # columns of the label column
LINE = re.compile(r"\b(line) (\d)")  # stays together
ASCII = {ord("·"): "-", ord("…"): "~"}
LOUD = {Loudness.ERROR: Paint.RED, Loudness.WARNING: Paint.YELLOW, Loudness.NOTE: Paint.BLUE}


def render(report: Report, look: Look) -> str:
    """All slips, our own faults, and one line for the whole."""
    total = len(report.slips)
    cards = [
        "\n".join(_card(slip, f"{number} of {total}", report, look)) + "\n"
        for number, slip in enumerate(report.slips, start=1)
    ]
    faults = [_lines("Ours", words.fault(fault), look) for fault in report.faults]
    closing = "\n".join(wrap(words.summary(report), look.width))
    text = "\n".join([*cards, *("\n".join(lines) + "\n" for lines in faults), closing]) + "\n"
    return text if look.unicode else text.translate(ASCII)


def _card(slip: Slip, number: str, report: Report, look: Look) -> list[str]:
    """The lines of one slip."""
    finding = slip.finding
    lines = [_tear(slip, number, look), *_at(slip, report, look)]
    lines += _quoted("Says", finding.span, look)
    lines += _lines("Wrong", words.sentence(finding.message), look)
    lines += _lines("Units", words.sentence(words.units(finding.told)), look)
    for related in finding.related:
        lines += _related(related, finding.span, report, look)
    return lines + _lines("Do", words.sentence(finding.help), look, box=True)


def _at(slip: Slip, report: Report, look: Look) -> list[str]:
    """Step and file on one line, or on a line each where they do not fit."""
    whole = words.where(slip, report)
    if not slip.step_title or columns(whole) <= look.width - LABEL:
        return _lines("At", whole, look)
    step = f'step "{slip.step_title}"'
    return [*_lines("At", step, look), *_lines("", words.places(slip, report), look)]


def _tear(slip: Slip, number: str, look: Look) -> str:
    """The line at which a slip is torn off; a rule's name that does not fit goes on a line of its own."""
    loud, rule = slip.loudness, slip.finding.rule
    texts = [number, loud.value, rule]
    fits = sum(columns(text) + 4 for text in texts) + 2 <= look.width
    dash = look.pick("┄", "-")
    line, used = "", 0
    for text in texts if fits else texts[:2]:
        line += f"{dash * 2} {look.paint(text, LOUD[loud]) if text == loud.value else text} "
        used += columns(text) + 4
    return line + dash * max(look.width - used, 2) + ("" if fits else f"\n  {rule}")


def _lines(label: str, text: str, look: Look, box: bool = False) -> list[str]:
    """A labelled entry with its further lines below the first; nothing where there is no text."""
    head = f"{look.pick('☐', '*') if box else ''}".ljust(2) + label
    lead = look.paint(head, Paint.DIM) + " " * (LABEL - columns(head))
    text = LINE.sub("\\1\N{NO-BREAK SPACE}\\2", visible(text))
    lines = wrap(text, look.width - LABEL)
    return [(lead if at == 0 else " " * LABEL) + line for at, line in enumerate(lines)]


def _quoted(label: str, span: Span, look: Look) -> list[str]:
    """The author's line, the span between marks."""
    left, right = look.pick("⟦", ">>"), look.pick("⟧", "<<")
    room = look.width - LABEL - columns(left + right)
    before, inside, after = window(span, room)
    if not (before + inside + after):
        return []
    head = f"  {label}"
    lead = look.paint(head, Paint.DIM) + " " * (LABEL - len(head))
    return [f"{lead}{before}{left}{look.paint(inside, Paint.MARK)}{right}{after}"]


def _related(related: Related, main: Span, report: Report, look: Look) -> list[str]:
    """Another place that matters, and its line."""
    path = related.span.source.path
    file = "" if path == main.source.path else f"{report.path(path)}, "
    place = f"{file}line {related.span.line}: {related.words}"
    return [*_lines("See", place, look), *_quoted("", related.span, look)]
