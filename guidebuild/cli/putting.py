"""A new file put in place and checked at once, for the commands that write what authors go on with."""

import sys
from pathlib import Path

from guidebuild.cli import asking, codes, reporting


def put(root: Path, target: Path, text: str, force: bool, trace: bool) -> int:
    """Never over a file that is there, unless forced; the exit code tells what the check found in it."""
    from guidebuild.build.drafting import put as write

    write(target, text, force)
    print(f"Written: {_short(target)}", file=sys.stderr)
    return told(root, target, trace)


def told(root: Path, target: Path, trace: bool) -> int:
    """What the check says of a file in a content folder; nothing of one that lies elsewhere."""
    from guidebuild.build.check import check

    root, whole = root.resolve(), target.resolve()
    if root not in whole.parents:
        return codes.CLEAN
    within = whole.relative_to(root).as_posix()
    result = check(root, within, cache=False)
    report = result.report(asking.prefix(root))
    if not report.slips and not report.guides:
        print(f"{_short(target)} is read without findings. No guide uses it yet.")
        return codes.of(report, trace)
    reporting.write(reporting.wanted([]), report)
    return codes.of(report, trace)


def _short(target: Path) -> str:
    try:
        return target.resolve().relative_to(Path.cwd()).as_posix()
    except ValueError:
        return str(target)
