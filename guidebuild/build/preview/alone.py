"""One guide read, proved, put before the rules and drawn, without the others: what a save of it needs."""

from functools import partial
from pathlib import Path

from guidebuild.build import outputs
from guidebuild.build.run import run
from guidebuild.build.settle import settle
from guidebuild.build.site_files import load_file
from guidebuild.reports.parts.slip import Slip


def alone(root: Path, path: str) -> tuple[dict[str, bytes], tuple[Slip, ...]]:
    """The guide's own pages and what is found in it; nothing where a fault of ours came in the way."""
    batch = run(root, [path], lambda done: None, keep=True)
    if batch.content is None or not batch.proofs:
        return {}, ()
    load = partial(load_file, root)
    made = [
        (name, maker(batch.content, batch.proofs, load, ())) for name, maker in outputs.makers()
    ]
    files = {name: data for name, data in outputs.merged(made).items() if not _lists_all(name)}
    return files, settle(batch.outcomes, batch.other, batch.settings, whole=False)


def _lists_all(name: str) -> bool:
    """A page that lists every guide can't be made of one."""
    return name.rpartition("/")[2] == "START.html"
