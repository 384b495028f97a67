"""A rule's examples: the first bad and the first good fixture of its tests, as they ship with guidebuild."""

import re
from dataclasses import dataclass
from pathlib import Path

from guidebuild.shipped import shipped

# What tests/rules/notes.py writes: carets under the place, then what is said there.
NOTE = re.compile(r"^( *)(\^+|\|)(?: \+\d+(?::\d+)?)? %% (?:([\w-]+): )?(.*)$")
TOLD = re.compile(r"^ *%% ")
HEADING = re.compile(r"^#{1,2} ")
LEFT, RIGHT = "⟦", "⟧"
MOST = 45  # lines of an example


@dataclass(frozen=True, slots=True)
class Example:
    """A piece of a guide's Markdown, what is found in it set off; `message` is what is said of it."""

    text: str
    message: str = ""


def examples(rule: str) -> tuple[Example | None, Example | None]:
    """A bad and a good one; None where there is none, or where the fixtures were left behind."""
    folder = shipped("tests") / "rules" / rule
    return _first(folder, "bad*.md", rule), _first(folder, "good*.md", rule)


def _first(folder: Path, pattern: str, rule: str) -> Example | None:
    for path in sorted(folder.glob(pattern)):
        return example(path.read_text(encoding="utf-8", errors="replace"), rule)
    return None


def example(text: str, rule: str) -> Example:
    """The sections of a fixture in which something is noted, or its beginning."""
    lines: list[str] = []
    noted: list[int] = []
    message = ""
    for line in text.splitlines():
        if note := NOTE.match(line):
            if note[3] == rule and lines:
                lines[-1] = lines[-1] if len(lines) - 1 in noted else _marked(lines[-1], note)
                noted.append(len(lines) - 1)
                message = message or note[4]
        elif not TOLD.match(line):
            lines.append(line)
    shown = _sections(lines, noted)
    return Example(re.sub(r"\n{3,}", "\n\n", "\n".join(shown[:MOST])).strip("\n"), message)


def _marked(line: str, note: re.Match[str]) -> str:
    """The line with the noted place between marks."""
    start = len(note[1])
    end = start + (0 if note[2] == "|" else len(note[2]))
    return f"{line[:start]}{LEFT}{line[start:end]}{RIGHT}{line[end:]}"


def _sections(lines: list[str], noted: list[int]) -> list[str]:
    """Front matter and steps as pieces: those with a note; where there is none, all but the front matter."""
    starts = [0, *(number for number, line in enumerate(lines) if HEADING.match(line))]
    pieces = list(zip(starts, [*starts[1:], len(lines)], strict=True))
    wanted = [piece for piece in pieces if any(piece[0] <= number < piece[1] for number in noted)]
    return [line for start, end in wanted or pieces[1:] or pieces for line in lines[start:end]]
