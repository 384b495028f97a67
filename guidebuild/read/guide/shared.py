"""Shared stages: read once, drawn into each guide that links to them."""

from dataclasses import dataclass, field

from guidebuild.guide.guide import Allow
from guidebuild.guide.step import Step
from guidebuild.read.faults import stage_in_itself, wrong_type
from guidebuild.read.files import inside
from guidebuild.read.guide.allow import allows
from guidebuild.read.guide.body import Body, body
from guidebuild.read.guide.pictures import finder
from guidebuild.read.library import Library
from guidebuild.read.markdown.front import front
from guidebuild.read.references.record import there
from guidebuild.read.yaml.read import read_entry
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source


@dataclass(frozen=True, slots=True)
class SharedStage:
    """A shared file: its steps, for which models it is, and what it silences."""

    path: str
    steps: tuple[Step, ...]
    devices: tuple[Said, ...]
    allows: tuple[Allow, ...]


@dataclass(slots=True)
class SharedStages:
    """Every shared file is read once; `open` is the chain of files that are being read."""

    library: Library
    read: dict[str, SharedStage | None] = field(default_factory=dict)
    open: list[str] = field(default_factory=list)

    def get(self, link: Said, beside: str) -> SharedStage | None:
        """The stage that a heading links to; told where there is none."""
        path = there(Said(link.text, link.span), (beside,), self.library)
        if path is None or path not in self.library.folder.files:
            self.library.report.lose(link.span.source.path)
            return None
        if path in self.open:
            chain = " → ".join([*self.open[self.open.index(path) :], path])
            self.library.report.tell(stage_in_itself, link.span, chain=chain)
            return None
        return self.file(path)

    def file(self, path: str) -> SharedStage | None:
        """The stage of a file that exists."""
        if path not in self.read:
            source = self.library.folder.source(path)
            self.open.append(path)
            self.read[path] = self._stage(source) if source else None
            self.open.pop()
            if source is None:
                self.library.report.lose(path)
        return self.read[path]

    def _stage(self, source: Source) -> SharedStage:
        report = self.library.report
        found = front(source, report)
        entry = None
        if found is not None:
            where = "front matter"
            entry = read_entry(source, found.start, found.end, "shared", where, report)
        devices = entry.all_said("devices") if entry else ()
        one = entry.said("device") if entry else None
        devices = devices or ((one,) if one else ())
        find = finder(source, [said.text for said in devices], self.library)
        read = body(source, found.body if found else 0, report, find)
        self._only_steps(read, source)
        silenced = list(read.allows)
        if entry is not None:
            silenced += allows(entry, Span(source, 0, len(source.text)))
        steps = [*read.loose, *(step for stage in read.stages for step in stage.steps)]
        return SharedStage(source.path, tuple(steps), devices, tuple(silenced))

    def _only_steps(self, read: Body, source: Source) -> None:
        """A shared file holds steps; a stage in it that links back is the stage in itself."""
        beside = source.path.rpartition("/")[0]
        for stage in read.stages:
            path = inside(beside, stage.link.text) if stage.link else None
            before = len(self.library.report.findings)
            if stage.link is not None and path in self.library.folder.files:
                self.get(stage.link, beside)
            if len(self.library.report.findings) == before:
                self._told(stage.stage.span)
        for piece in (*read.intro, *read.pictures):
            self._told(piece.span)

    def _told(self, span: Span) -> None:
        self.library.report.tell(
            wrong_type,
            span,
            what="a shared stage",
            wanted="hold steps and nothing else",
            found="",
            do="write `##` for its steps; the guide that links to it names the stage",
        )
