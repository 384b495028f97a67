"""Who has which stick, and what was on it: one line a stick and guide, in a file that a spreadsheet opens."""

import csv
import io
from collections.abc import Iterable
from dataclasses import dataclass

from guidebuild.handover.marks import Mark

NAME = "sticks.csv"
_FIELDS = ("stick", "date", "holder", "guide", "issue", "languages", "steps")


@dataclass(frozen=True, slots=True)
class Held:
    """A guide on a stick. `guide` is its content path; `languages` are tags with spaces between."""

    stick: str
    date: str
    holder: str
    guide: str
    issue: str
    languages: str
    steps: tuple[Mark, ...]


def read_list(text: str) -> tuple[list[Held], list[int]]:
    """The lines of the list, and the numbers of those that can't be read."""
    held: list[Held] = []
    bad: list[int] = []
    reader = csv.DictReader(io.StringIO(text.replace("\0", "")))
    while True:
        try:
            row = next(reader, None)
        except csv.Error:  # a field of more than 128 KiB, a line break that is none
            bad.append(reader.reader.line_num)
            continue
        if row is None:
            break
        steps = _steps(row.get("steps") or "")
        if steps is None or not row.get("stick") or not row.get("guide"):
            bad.append(reader.line_num)
            continue
        stick, day, holder, guide, issue, languages = (row.get(name) or "" for name in _FIELDS[:-1])
        held.append(Held(stick, day, holder, guide, issue, languages, steps))
    return held, bad


def _steps(text: str) -> tuple[Mark, ...] | None:
    marks = []
    for word in text.split():
        step, equals, sums = word.rpartition("=")
        caution, slash, rest = sums.partition("/")
        if not (equals and slash):
            return None
        marks.append(Mark(step, caution, rest))
    return tuple(marks)


def write_list(held: Iterable[Held]) -> str:
    """The file's text, sorted by stick and guide."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(_FIELDS)
    for one in sorted(held, key=lambda one: (one.stick, one.guide)):
        steps = " ".join(f"{mark.step}={mark.caution}/{mark.rest}" for mark in one.steps)
        writer.writerow(
            [one.stick, one.date, one.holder, one.guide, one.issue, one.languages, steps]
        )
    return out.getvalue()
