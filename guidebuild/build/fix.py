"""`check --fix`: what has one safe answer is mended, tried on a copy first, and kept only if nothing got worse."""

from collections import Counter
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from guidebuild.build.edits import Plan, plan
from guidebuild.build.result import CheckResult
from guidebuild.build.scratch import scratch, write
from guidebuild.build.trouble import Trouble
from guidebuild.reports.parts.slip import Slip

ROUNDS = 10  # mending one thing may bring the next to light
Checker = Callable[[Path], CheckResult]


@dataclass(slots=True)
class Fixed:
    """`before` and `after`: texts of the changed files. `mended`: how many findings. `result`: what is left."""

    result: CheckResult
    mended: int = 0
    before: dict[str, str] = field(default_factory=dict)
    after: dict[str, str] = field(default_factory=dict)


def fix(root: Path, check: Checker) -> Fixed:
    """What would stand in the files; nothing but a copy is written. Applied twice it changes nothing more."""
    with scratch(root) as copy:
        fixed = Fixed(check(copy))
        for _ in range(ROUNDS):
            taken = _kept(copy, fixed.result, check)
            if taken is None:
                break
            kept, fixed.result = taken
            fixed.mended += len(kept.slips)
            for path, text in kept.texts.items():
                fixed.before.setdefault(path, text)
            fixed.after |= kept.mended()
    return fixed


def put(root: Path, fixed: Fixed) -> None:
    """Write the mended files into the content folder itself."""
    try:
        write(root, fixed.after)
    except OSError as error:
        raise Trouble(f"Can't write {error.filename}: {error.strerror}.") from error


def _kept(copy: Path, before: CheckResult, check: Checker) -> tuple[Plan, CheckResult] | None:
    """The largest part of what is offered that makes nothing worse, done on the copy; None: nothing is."""
    offered = plan(before.slips)
    if not offered.slips:
        return None
    result = _tried(copy, offered.mended(), check)
    if not _worse(before, result):
        return offered, result
    write(copy, offered.texts)
    good = [slip for slip in offered.slips if _harmless(copy, slip, before, check)]
    kept = plan(good)
    if not good:
        return None
    result = _tried(copy, kept.mended(), check)
    if _worse(before, result):
        write(copy, kept.texts)
        return None
    return kept, result


def _harmless(copy: Path, slip: Slip, before: CheckResult, check: Checker) -> bool:
    """Whether mending this alone makes nothing worse; the copy is left as it was."""
    alone = plan([slip])
    worse = _worse(before, _tried(copy, alone.mended(), check))
    write(copy, alone.texts)
    return not worse


def _tried(copy: Path, texts: Mapping[str, str], check: Checker) -> CheckResult:
    write(copy, texts)
    return check(copy)


def _worse(before: CheckResult, after: CheckResult) -> bool:
    """Whether any guide has more findings of a rule than before.

    A guide that could not be read as a whole was not proved: what the proof says of it afterwards was there all the
    time, and is not held against the mending.
    """
    proved = set(before.guides)
    had = _counts(before.slips)
    has = _counts(after.slips)
    lost = proved - set(after.guides)
    return bool(lost) or any(
        number > had[key] for key, number in has.items() if key[1] in proved or not key[1]
    )


def _counts(slips: Iterable[Slip]) -> Counter[tuple[str, str]]:
    """Findings by rule and guide; by no guide where it stands in a record."""
    return Counter((slip.finding.rule, guide) for slip in slips for guide in slip.guides or ("",))
