"""Expected findings, written into a fixture under the words that they point at.

    undo: plate-screws
          ^^^^^^^^^^^^ %% out-of-reach: screws plate-screws are behind the cover, which is still fitted
    %% only when: revision = b

A note line is spaces, carets under the exact span, `%%`, and what is said there: `rule: message`, or `see: words` for
a related place. `+2` behind the carets means: to the end of the second line below; `+2:7`: to its column 7. One bar
(`|`) is an empty span. A line of `%%` alone adds the configurations to the note above. Notes are cut out before
anything is read, so the fixture's own lines count without them.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from guidebuild.source.span import Span
from guidebuild.source.text import Source

_NOTE = re.compile(r"^( *)(\^+|\|)(?: \+(\d+)(?::(\d+))?)? %% (.*)$")
_TOLD = re.compile(r"^ *%% ((?:only|except) when): (.*)$|^ *%% configurations: (.*)$")


@dataclass(frozen=True, slots=True, order=True)
class Note:
    """What is said at one place: offsets into the text without notes."""

    start: int
    end: int
    words: str
    told: str = ""


def cut(text: str) -> tuple[str, list[Note]]:
    """The text without its notes, and the notes."""
    kept: list[str] = []
    marks: list[tuple[int, re.Match[str], str]] = []
    for line in text.split("\n"):
        if note := _NOTE.match(line):
            marks.append((len(kept) - 1, note, ""))
        elif (told := _TOLD.match(line)) and marks:
            number, note, _ = marks[-1]
            marks[-1] = number, note, told[3] or f"{told[1]} {told[2]}"
        else:
            kept.append(line)
    starts = [0]
    for line in kept:
        starts.append(starts[-1] + len(line) + 1)
    return "\n".join(kept), sorted(_note(kept, starts, *mark) for mark in marks)


def _note(kept: list[str], starts: list[int], line: int, note: re.Match[str], told: str) -> Note:
    spaces, carets, down, column, words = note.groups()
    start = starts[line] + len(spaces)
    end = start + (0 if carets == "|" else len(carets))
    if down:
        last = line + int(down)
        end = starts[last] + (int(column) - 1 if column else len(kept[last]))
    return Note(start, end, words, told)


def put_in(text: str, notes: Iterable[Note]) -> str:
    """The text with its notes, each below the line where its span begins."""
    source = Source("", text)
    lines: list[str] = []
    waiting = sorted(notes)
    for number, line in enumerate(text.split("\n"), start=1):
        lines.append(line)
        here = [note for note in waiting if source.position(note.start)[0] == number]
        for note in here:
            lines.extend(_lines(source, note))
    return "\n".join(lines)


def _lines(source: Source, note: Note) -> Iterator[str]:
    line, column = source.position(note.start)
    last, end = source.position(note.end)
    if line == last:
        yield " " * (column - 1) + ("^" * (end - column) or "|") + f" %% {note.words}"
    else:
        carets = "^" * max(1, len(source.line(line)) - column + 1)
        to_the_end = end == len(source.line(last)) + 1
        down = f" +{last - line}" + ("" if to_the_end else f":{end}")
        yield " " * (column - 1) + carets + down + f" %% {note.words}"
    if note.told.startswith(("only when ", "except when ")):
        word, _, rest = note.told.partition(" when ")
        yield f"%% {word} when: {rest}"
    elif note.told:
        yield f"%% configurations: {note.told}"


def at(span: Span, words: str, told: str = "") -> Note:
    """The note that would stand for this."""
    return replace(Note(span.start, span.end, words), told=told)
