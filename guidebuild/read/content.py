"""A content folder into values: the one way in."""

from collections.abc import Iterable
from pathlib import Path, PurePath

from guidebuild.guide.content import Content
from guidebuild.read.faults import file_missing, outside_content
from guidebuild.read.files import folder, guide_paths, misnamed_paths, shared_paths
from guidebuild.read.guide.read import read_guide
from guidebuild.read.guide.shared import SharedStages
from guidebuild.read.library import Library
from guidebuild.read.report import Report
from guidebuild.source.finding import Finding
from guidebuild.source.span import Span
from guidebuild.source.text import Source


def read_content(
    root: Path, only: Iterable[str | PurePath] | None = None, rest: bool | None = None
) -> tuple[Content, list[Finding]]:
    """Everything under `root`, and what is wrong with it, in order.

    `only`: guides (paths relative to `root`); then nothing else is read but what these draw on.
    `rest`: what no guide draws on is read too (usual where all guides are read).
    """
    report = Report()
    found = folder(root, report)
    library = Library(found, report)
    library.open()
    shared = SharedStages(library)
    wanted = None if only is None else {PurePath(path).as_posix() for path in only}
    paths = sorted(path for path in guide_paths(found) if wanted is None or path in wanted)
    guides = tuple(one for path in paths if (one := read_guide(path, shared)) is not None)
    if wanted is None if rest is None else rest:
        _rest(library, shared)
    content = Content(
        root=str(root),
        settings=library.settings,
        tools=library.tools,
        terms=library.terms,
        devices={id_: one for id_, one in sorted(library.devices.items()) if one is not None},
        kits={id_: one for id_, one in sorted(library.kits.items()) if one is not None},
        guides=guides,
        sources={path: one for path, one in sorted(found.sources.items()) if one is not None},
        files=found.files,
    )
    return content, report.findings


def _rest(library: Library, shared: SharedStages) -> None:
    """What no guide draws on: read too, so that one run shows all that is wrong."""
    for id_ in library.device_ids:
        library.record(id_)
    for id_ in library.kit_ids:
        library.kit_of(id_)
    for path in shared_paths(library.folder):
        shared.file(path)
    for path in misnamed_paths(library.folder):
        right = path.removesuffix(".yml") + ".yaml"
        nothing = Span(Source(path, ""), 0, 0)
        library.report.tell(file_missing, nothing, file=right, do=f"give `{path}` this name")
    for path in sorted(library.folder.leaving):
        if path.endswith((".md", ".yaml")):
            nothing = Span(Source(path, ""), 0, 0)
            library.report.tell(outside_content, nothing, path=path)
