"""A rule's examples: the first bad and the first good fixture of its tests, as they ship with guidebuild."""

import re
from dataclasses import dataclass
from pathlib import Path

from guidebuild.shipped import shipped

NOTE = re.compile(
    r"^\s*%%|^\s*\^+\s*%%"
)  # a line that says what is expected; cut out before reading


@dataclass(frozen=True, slots=True)
class Example:
    """The Markdown of a guide that is wrong or right, without its front matter."""

    name: str
    text: str


def examples(rule: str) -> tuple[Example | None, Example | None]:
    """A bad and a good one; None where there is none, or where the fixtures were left behind."""
    folder = shipped("tests/rules") / rule
    return _first(folder, "bad-*.md"), _first(folder, "good-*.md")


def _first(folder: Path, pattern: str) -> Example | None:
    for path in sorted(folder.glob(pattern)):
        return Example(path.stem, body(path.read_text(encoding="utf-8")))
    return None


def body(text: str) -> str:
    """A guide's text without front matter and notes."""
    lines = [line for line in text.splitlines() if not NOTE.match(line)]
    if lines and lines[0] == "---" and "---" in lines[1:]:
        lines = lines[lines.index("---", 1) + 1 :]
    return re.sub(r"\n{3,}", "\n\n", "\n".join(lines)).strip("\n")
