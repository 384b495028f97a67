"""How many rules and fixtures there are, what they say of the demo, and what doubtful rules say of good guides.

`python -m tests.rules --table` and `python -m tests.rules --doubtful` print it.
"""

import tempfile
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

from guidebuild.build import rulebook
from guidebuild.build.check import check
from guidebuild.build.fix import fix
from guidebuild.build.result import CheckResult
from guidebuild.source.finding import Category, Finding
from tests.rules.fixture import HERE, Fixture, findings_of, fixtures
from tests.rules.listed import headings, listed

CONTENT = HERE.parents[1] / "content"
DOUBTFUL = {Category.SUSPICIOUS, Category.TEXT}
ROW = "{:26}{:>6}{:>6}{:>6}{:>7}"


def table() -> Iterator[str]:
    """A line a subject: rules, bad and good fixtures, findings on the demo."""
    bad = Counter(one.rule for one in fixtures() if one.is_bad)
    good = Counter(one.rule for one in fixtures() if not one.is_bad)
    demo = Counter(one.rule for one in check(CONTENT, jobs=1, cache=False).findings)
    yield ROW.format("subject", "rules", "bad", "good", "demo")
    for subject in headings():
        yield _row(subject, listed(subject), bad, good, demo)
    rest = sorted(set(rulebook.names()) - set(listed()))
    if rest:
        yield _row("in no list", rest, bad, good, demo)
    yield _row("all", list(rulebook.names()), bad, good, demo)


def _row(subject: str, names: list[str], *counts: Counter[str]) -> str:
    return ROW.format(subject, len(names), *(sum(one[name] for name in names) for one in counts))


def doubtful() -> Iterator[tuple[str, Finding]]:
    """Where, and what a rule that may be wrong says there: of every other rule's good fixtures, and of the demo."""
    names = [name for name in rulebook.names() if rulebook.entry(name).category in DOUBTFUL]
    for fixture in fixtures():
        if not fixture.is_bad:
            content = fixture.content()
            for name in names:
                if name != fixture.rule:
                    for found in findings_of(name, content):
                        yield f"{fixture.rule}/{fixture.path.name}", found
    for found in check(CONTENT, jobs=1, cache=False).findings:
        if found.category in DOUBTFUL:
            yield "content", found


def offering() -> Iterator[tuple[Fixture, int]]:
    """Bad fixtures whose rule offers to mend something, and how many of its findings are left when that is done."""
    for one in fixtures():
        if one.is_bad:
            with tempfile.TemporaryDirectory() as name:
                folder = Path(name)
                one.lay_out(folder)
                before = _without_cache(folder).findings
                if any(found.rule == one.rule and found.edits for found in before):
                    after = fix(folder, _without_cache).result.findings
                    yield one, sum(found.rule == one.rule for found in after)


def _without_cache(root: Path) -> CheckResult:
    return check(root, jobs=1, cache=False)
