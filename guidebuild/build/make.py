"""The site: everything checked, every output asked for its files, and all put in place at once."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path

from guidebuild.build import outputs
from guidebuild.build.check import check_and_keep
from guidebuild.build.fault import fault
from guidebuild.build.result import CheckResult
from guidebuild.build.swap import put
from guidebuild.build.trouble import Trouble
from guidebuild.reports.parts.report import Fault, Report

Progress = Callable[[int, int], None]


@dataclass(frozen=True, slots=True)
class Made:
    """`written`: how many files stand in the site by us; `kept`: the names of others' files beside them."""

    result: CheckResult
    written: int = 0
    kept: tuple[str, ...] = ()
    faults: tuple[Fault, ...] = ()

    def report(self, prefix: str = "") -> Report:
        """The check's report, with the faults of the outputs."""
        report = self.result.report(prefix)
        return replace(report, faults=report.faults + self.faults)


def make(root: Path, out: Path, progress: Progress = lambda done, total: None) -> Made:
    """Build the site of a content folder into `out`.

    Findings do not stop it, an author wants to see a draft; a fault of ours does, and the old site stays.
    Trouble where `out` and the content lie in each other, or `out` can't be written.
    """
    _apart(root, out)
    result = check_and_keep(root, progress)
    content = result.content
    if result.faults or content is None:
        return Made(result)
    try:
        made = [
            (name, maker(content, result.proofs, partial(_load, root)))
            for name, maker in outputs.makers()
        ]
        files = outputs.merged(made)
    except Exception as error:
        return Made(result, faults=(fault(error),))
    return Made(result, len(files), put(files, out))


def _load(root: Path, path: str) -> bytes | None:
    """A file of the content folder for an output: outputs touch no disk themselves."""
    file = (root / path).resolve()
    inside = root.resolve() in file.parents
    return file.read_bytes() if inside and file.is_file() else None


def _apart(root: Path, out: Path) -> None:
    """A site in the content folder would be read as content, and the other way round would be replaced."""
    inside, outside = out.resolve(), root.resolve()
    if inside == outside or outside in inside.parents or inside in outside.parents:
        raise Trouble(f"The site can't be in the content folder, nor around it: {out}. Use --out.")
