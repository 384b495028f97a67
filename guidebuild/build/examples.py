"""A rule's examples: the first bad and the first good fixture of its tests, as they ship with guidebuild."""

import re
from dataclasses import dataclass
from pathlib import Path

from guidebuild.shipped import shipped

# What tests/rules/notes.py writes: carets under the place, then what is said there.
NOTE = re.compile(r"^( *)(\^+|\|)(?: \+\d+(?::\d+)?)? %% (?:([\w-]+): )?(.*)$")
TOLD = re.compile(r"^ *%% ")
HEADING = re.compile(r"^#{1,2} ")
EMPTY = re.compile(r"^$")  # what parts the entries of a catalogue, and captions
LEFT, RIGHT = "⟦", "⟧"
MOST = 45  # lines of an example


@dataclass(frozen=True, slots=True)
class Example:
    """A piece of a guide, a catalogue or captions, what is found in it set off; `message` is what is said of it."""

    text: str
    message: str = ""


def examples(rule: str) -> tuple[Example | None, Example | None]:
    """A bad and a good one; None where there is none, or where the fixtures were left behind."""
    folder = shipped("tests") / "rules" / rule
    return _first(folder, "bad*.md", rule), _first(folder, "good*.md", rule)


def _first(folder: Path, pattern: str, rule: str) -> Example | None:
    for path in sorted(folder.glob(pattern)):
        texts = [path.read_text(encoding="utf-8", errors="replace")]
        texts += [
            one.read_text(encoding="utf-8", errors="replace")
            for one in sorted((*folder.glob(f"{path.stem}.*.po"), *folder.glob("*.vtt")))
            if one.suffix == ".po" or one.name.removesuffix(".vtt") in texts[0]
        ]
        told = [number for number, text in enumerate(texts) if f"%% {rule}: " in text]
        number = told[0] if told else _of_good(folder, rule, len(texts))
        return example(texts[number], rule, EMPTY if number else HEADING)
    return None


def _of_good(folder: Path, rule: str, count: int) -> int:
    """Where the rule looks: at the guide, where a bad guide has a note of it, else at what lies beside."""
    texts = (path.read_text(encoding="utf-8", errors="replace") for path in folder.glob("bad*.md"))
    return 0 if count < 2 or any(f"%% {rule}: " in text for text in texts) else 1


def example(text: str, rule: str, begins: re.Pattern[str] = HEADING) -> Example:
    """The sections of a fixture in which something is noted, or its beginning; `begins`: a section's first line."""
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
    shown = _sections(lines, noted, begins)
    return Example(re.sub(r"\n{3,}", "\n\n", "\n".join(shown[:MOST])).strip("\n"), message)


def _marked(line: str, note: re.Match[str]) -> str:
    """The line with the noted place between marks."""
    start = len(note[1])
    end = start + (0 if note[2] == "|" else len(note[2]))
    return f"{line[:start]}{LEFT}{line[start:end]}{RIGHT}{line[end:]}"


def _sections(lines: list[str], noted: list[int], begins: re.Pattern[str]) -> list[str]:
    """Front matter and steps as pieces: those with a note; where there is none, all but the front matter."""
    starts = [0, *(number for number, line in enumerate(lines) if begins.match(line))]
    pieces = list(zip(starts, [*starts[1:], len(lines)], strict=True))
    others = pieces[-1:] if begins is EMPTY else pieces[1:] or pieces
    wanted = [piece for piece in pieces if any(piece[0] <= number < piece[1] for number in noted)]
    return [line for start, end in wanted or others for line in lines[start:end]]
