"""Files that translators sent back: read, checked, and taken whole or not at all."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from pathlib import Path

from guidebuild.build.catalogue_header import revised
from guidebuild.build.catalogues import finding as fault_finding
from guidebuild.build.catalogues import sources
from guidebuild.build.pair_checks import finding, slips
from guidebuild.build.returned_captions import is_captions, laid
from guidebuild.build.take_out import now, write_catalogue
from guidebuild.guide.content import Content
from guidebuild.source.finding import Category, Finding
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.catalogue.bring import Brought, brought, by_id
from guidebuild.translate.catalogue.pair import Pair
from guidebuild.translate.catalogue.terms import approved
from guidebuild.translate.po.entry import Catalogue
from guidebuild.translate.po.reader import read_po
from guidebuild.translate.segments.segment import Segment
from guidebuild.translate.xliff.entries import read_entries
from guidebuild.translate.xliff.shapes import is_language

# A slip of these means another meaning, or a page that can't be built: the file is refused.
GRAVE = frozenset({"placeholder-lost", "number-changed", "signal-word-translated-by-hand"})
OF_THE_SOURCE = frozenset({"text-missing", "translation-outdated"})  # counted, not told one by one
LARGEST = 64 * 2**20  # bytes


@dataclass(frozen=True, slots=True)
class Returned:
    """One file: what it was for, what became of it; `refused` is set where nothing of it was taken."""

    name: str
    file: str
    language: str
    brought: Brought | None
    findings: tuple[Finding, ...]

    @property
    def refused(self) -> bool:
        """Whether nothing was taken."""
        return self.brought is None


def bring_back(root: Path, content: Content, path: Path) -> Returned:
    """Read one file, check each sentence, and put all of it into the catalogue, or nothing."""
    data = path.read_bytes()[: LARGEST + 1]
    source = Source(path.as_posix(), data.decode("utf-8", "replace"))
    catalogue, faults = _read(content, path, source)
    if faults:
        return Returned(path.name, "", "", None, faults)
    file, language = _meant(content, path, catalogue, source.text)
    if not file:
        return Returned(path.name, "", language, None, (_nowhere(source, path),))
    current, _ = now(root, content, language)
    texts = by_id(current[file], sources(content)[file])
    own = content.settings.languages[0]
    terms = approved(content.terms, own, language)
    found = tuple(_slips(catalogue, texts, source, terms, (own, language)))
    if any(one.rule in GRAVE for one in found):
        return Returned(path.name, file, language, None, found)
    result = brought(current[file], catalogue, texts, own)
    if result.taken:
        head = revised(result.catalogue.header, current[file].header)
        result = replace(result, catalogue=replace(result.catalogue, header=head))
    write_catalogue(root, file, language, result.catalogue)
    return Returned(path.name, file, language, result, found)


def _read(content: Content, path: Path, source: Source) -> tuple[Catalogue, tuple[Finding, ...]]:
    """What came back as a catalogue, whichever form it came in, and what can't be read of it."""
    if is_captions(path):
        captions = laid(content, path, source)
        return captions.catalogue, captions.findings
    is_xml = source.text.lstrip("\ufeff \r\n\t").startswith("<")
    catalogue, faults = read_entries(source.text) if is_xml else read_po(source.text)
    return catalogue, tuple(fault_finding(one, source) for one in faults)


def _meant(content: Content, path: Path, catalogue: Catalogue, text: str) -> tuple[str, str]:
    """The content file and the language, from the header; else from where the file lies."""
    header = catalogue.header
    file = header.get("X-Source-File", "")
    language = header.get("Language", "").replace("_", "-")
    if not file:
        original = re.search(r'\boriginal="([^"]+)"', text)
        target = re.search(r'\b(?:trgLang|target-language)="([^"]+)"', text)
        file = original[1] if original else ""
        language = target[1] if target else language
    known = sources(content)
    if file not in known:
        ways = {str(Path(one).with_suffix("")): one for one in known}
        file = next(
            (one for way, one in ways.items() if path.with_suffix("").as_posix().endswith(way)), ""
        )
    return file if is_language(language) else "", language


def _nowhere(source: Source, path: Path) -> Finding:
    message = f"{path.name} does not say which content file and language it is for"
    help_ = (
        "keep the header lines `Language` and `X-Source-File`, or the attribute `original`; name"
        " captions as in `film.de.vtt`"
    )
    return Finding("file-not-ours", Category.TRANSLATION, Span(source, 0, 0), message, help_)


def _slips(
    catalogue: Catalogue,
    texts: Mapping[str, Segment],
    source: Source,
    terms: Mapping[str, str],
    languages: tuple[str, str],
) -> Iterator[Finding]:
    for entry in catalogue.entries:
        segment = texts.get(entry.context or "")
        if segment is None or entry.obsolete or not entry.translations[0]:
            continue
        if entry.source != segment.text:
            continue  # made for an older source: kept as outdated, so its numbers are the older ones
        for rule, slip in slips(Pair(segment, entry, *languages, terms), OF_THE_SOURCE):
            yield finding(rule, slip, source, entry)
