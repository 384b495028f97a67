"""Our own mistakes, caught where they happen so that everything else is still checked."""

import os
import traceback
from collections.abc import Iterable
from pathlib import PurePath

from guidebuild.reports.parts.report import Fault

PACKAGE = "guidebuild"
HERE = f"{PurePath(__file__).parents[2]}{os.sep}"  # no path of anybody's machine goes into a report


def fault(error: BaseException, rule: str = "", path: str = "") -> Fault:
    """What fell over, in one line, with the last place of ours that it went through."""
    frames = traceback.extract_tb(error.__traceback__)
    ours = [frame for frame in frames if PACKAGE in PurePath(frame.filename).parts]
    at = f" ({_inside(ours[-1].filename)}, line {ours[-1].lineno})" if ours else ""
    said = " ".join(str(error).replace(HERE, "").split())[:200]
    what = f"{type(error).__name__}{': ' + said if said else ''}{at}"
    return Fault(rule, path, what, "".join(traceback.format_exception(error)))


def _inside(filename: str) -> str:
    """A file's way from the package on: no path of anybody's machine."""
    parts = PurePath(filename).parts
    last = len(parts) - 1 - parts[::-1].index(PACKAGE)
    return "/".join(parts[last + 1 :])


def told_once(faults: Iterable[Fault]) -> tuple[Fault, ...]:
    """Each fault at the first guide that showed it."""
    met: dict[tuple[str, str], Fault] = {}
    for found in faults:
        met.setdefault((found.rule, found.what), found)
    return tuple(met.values())
