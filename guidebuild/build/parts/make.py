"""One part made: its guides checked, or built, and laid into a folder."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial
from hashlib import sha256
from pathlib import Path

from guidebuild import __version__
from guidebuild.build import outputs
from guidebuild.build.batch import Batch
from guidebuild.build.check import result_of
from guidebuild.build.fault import fault
from guidebuild.build.held_back import held_back
from guidebuild.build.make import apart
from guidebuild.build.parts.elsewhere import OtherParts
from guidebuild.build.parts.part import Origin, files_of
from guidebuild.build.parts.share import Share
from guidebuild.build.result import CheckResult
from guidebuild.build.run import run
from guidebuild.build.share import run_all
from guidebuild.build.site_files import load_file, translations
from guidebuild.build.swap import put
from guidebuild.outputs.made import Made
from guidebuild.read.files import folder, guide_paths
from guidebuild.read.report import Report

Progress = Callable[[int, int], None]


@dataclass(frozen=True, slots=True)
class Wanted:
    """`pages`: built, not only checked. `languages`: only these, none: all. `prefix`: the way to the content."""

    share: Share
    out: Path
    pages: bool = False
    languages: tuple[str, ...] = ()
    jobs: int | None = None
    prefix: str = ""


def make_part(
    root: Path, wanted: Wanted, progress: Progress = lambda done, total: None
) -> tuple[CheckResult, int]:
    """What was found in the part's own guides, and how many these are.

    What looks at all guides together has to wait until the parts are joined. A fault of ours leaves a part without
    pages. Trouble where `out` can't be written.
    """
    apart(root, wanted.out)
    paths = sorted(guide_paths(folder(root, Report())))
    mine, first = wanted.share.mine(paths), wanted.share.first
    made: list[tuple[str, Made]] = []
    if wanted.pages:
        done = iter(range(1, len(mine) + 1))
        batch = run(root, mine, lambda _: progress(next(done), len(mine)), rest=first, keep=True)
        made = _built(root, wanted, batch, frozenset(paths))
    else:
        batch = run_all(root, mine, first, wanted.jobs, progress)
    files = outputs.merged((name, one.files) for name, one in made) if wanted.pages else None
    listed = {name: one.listed for name, one in made}
    origin = Origin(wanted.share.of, __version__, digest(root), wanted.languages, wanted.prefix)
    put(files_of(wanted.share, origin, batch, files, listed), wanted.out)
    return result_of(batch, whole=False), len(mine)


def _built(
    root: Path, wanted: Wanted, batch: Batch, paths: frozenset[str]
) -> list[tuple[str, Made]]:
    checked = replace(
        result_of(batch, whole=False), content=batch.content, proofs=tuple(batch.proofs)
    )
    held = held_back(checked)
    content, proofs = held.content, held.proofs
    if batch.faults or content is None or any(one.faults for one in batch.outcomes):
        return []
    try:
        mine = [proof.guide.path for proof in proofs]
        others = tuple(translations(root, content, mine, wanted.languages))
        load, known = (
            partial(load_file, root),
            OtherParts(root, paths, content.settings.languages[0]),
        )
        return [
            (name, outputs.in_part(one, content, proofs, load, others, known.in_language))
            for name, one in outputs.modules()
        ]
    except Exception as error:
        batch.faults.append(fault(error))
        return []


def digest(root: Path) -> str:
    """Of all files of the content folder: parts of other files don't fit together."""
    whole = sha256()
    for path in sorted(folder(root, Report()).files):
        try:
            with (root / path).open("rb") as file:
                inside = sha256(file.read()).hexdigest()
        except OSError:
            inside = "can't be read"
        whole.update(f"{path}\0{inside}\n".encode("utf-8", "surrogatepass"))
    return whole.hexdigest()
