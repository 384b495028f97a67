"""The catalogues of a content folder: one a source file and language, in the same tree."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path, PurePosixPath

from guidebuild.build.captions import captioned
from guidebuild.guide.content import Content
from guidebuild.source.finding import Category, Finding
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.captions.walk import caption_segments
from guidebuild.translate.fault import Fault
from guidebuild.translate.po.entry import Catalogue
from guidebuild.translate.po.reader import read_po
from guidebuild.translate.segments.of_tools import tool_segments
from guidebuild.translate.segments.segment import Segment
from guidebuild.translate.segments.take import segments

FOLDER = "translations"
_NOTHING = Catalogue({}, (), ())


@dataclass(frozen=True, slots=True)
class Catalogued:
    """What was read of one language: content file -> catalogue, and what is wrong in the files."""

    catalogues: Mapping[str, Catalogue]
    findings: tuple[Finding, ...]


def sources(content: Content) -> dict[str, tuple[Segment, ...]]:
    """Every content file that has words of its author's; a shared stage and a record are there once."""
    found: dict[str, dict[str, Segment]] = {}
    for segment in _all(content):
        found.setdefault(segment.file, {}).setdefault(segment.id, segment)
    return {file: tuple(some.values()) for file, some in sorted(found.items())}


def _all(content: Content) -> Iterator[Segment]:
    for one in content.guides:
        yield from segments(one.guide)
        for use in one.guide.kits:
            yield from segments(use.kit)
    for device in content.devices.values():
        yield from segments(device)
    for kit in content.kits.values():
        yield from segments(kit)
    yield from tool_segments(content.tools)
    for film in captioned(content):
        yield from caption_segments(film.captions, film.source)


def place(file: str, language: str) -> str:
    """Where a content file's catalogue lies: `guides/p2/head.md` in German in `translations/de/guides/p2/head.po`."""
    return str(PurePosixPath(FOLDER, language, file).with_suffix(".po"))


def read_catalogues(root: Path, language: str, files: Iterable[str]) -> Catalogued:
    """The catalogues of these content files that are there."""
    found: dict[str, Catalogue] = {}
    findings: list[Finding] = []
    for file in files:
        path = place(file, language)
        if not (root / path).is_file():
            continue
        text = (root / path).read_text(encoding="utf-8", errors="replace")
        catalogue, faults = read_po(text)
        found[file] = catalogue
        findings += [finding(fault, Source(path, text)) for fault in faults]
    return Catalogued(found, tuple(findings))


def has_catalogue(root: Path, file: str, language: str) -> bool:
    """Whether a content file is translated into a language at all."""
    return (root / place(file, language)).is_file()


def finding(fault: Fault, source: Source) -> Finding:
    """A fault of a file that came from outside, as a finding."""
    line = min(fault.line, len(source.line_starts))
    start = min(source.line_starts[line - 1] + fault.column - 1, len(source.text))
    span = Span(source, start, start)
    return Finding(
        fault.rule, Category.TRANSLATION, span, fault.message, "mend the file, or take it out anew"
    )


def catalogue_of(catalogued: Mapping[str, Catalogue], file: str) -> Catalogue:
    """The catalogue of a content file, empty where there is none."""
    return catalogued.get(file, _NOTHING)
