"""Drafts of the demo devices, written into a copy of the content and checked there."""

import shutil
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from guidebuild.build.check import check
from guidebuild.build.drafting import Asked, drafted
from guidebuild.plan.draft.draft import Drafted
from guidebuild.source.finding import Category, Finding

CONTENT = Path(__file__).parents[2] / "content"
OF_THE_WRITER = {Category.TRANSLATION}  # a draft is not translated, and need not be


@dataclass(frozen=True)
class Draft:
    """One draft with what the check says of it."""

    asked: Asked
    text: str
    made: Drafted
    found: tuple[Finding, ...]


def copied(to: Path) -> Path:
    """The demo content where it may be written to."""
    return Path(shutil.copytree(CONTENT, to / "content"))


def every(root: Path, wishes: list[Asked]) -> Iterator[Draft]:
    """All drafts, checked in one run."""
    made = {}
    for number, asked in enumerate(wishes):
        _, text, found = drafted(CONTENT, asked)
        path = f"guides/{asked.device}/a-draft-{number}.md"
        (root / path).write_text(text, encoding="utf-8")
        made[path] = asked, text, found
    result = check(root, cache=False)
    assert not result.faults, result.faults
    told: dict[str, list[Finding]] = {}
    for one in result.findings:
        if one.category not in OF_THE_WRITER:
            told.setdefault(one.span.source.path, []).append(one)
    for path, (asked, text, found) in made.items():
        yield Draft(asked, text, found, tuple(told.get(path, ())))
