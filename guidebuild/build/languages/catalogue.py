"""One catalogue against its source as it is now: what is missing, out of date or wrong in it."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from guidebuild.build import pair_checks
from guidebuild.build.catalogues import place
from guidebuild.build.rulebook import entry as rule_of
from guidebuild.build.tell import finding
from guidebuild.guide.content import Content
from guidebuild.proof.hit import Hit
from guidebuild.source.finding import Finding
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.catalogue.match import matched
from guidebuild.translate.catalogue.pair import Pair
from guidebuild.translate.catalogue.terms import approved
from guidebuild.translate.checks import text_missing
from guidebuild.translate.po.entry import Catalogue, Entry
from guidebuild.translate.po.reader import read_po
from guidebuild.translate.segments.segment import Segment

MOST = 10  # missing texts of one catalogue told one by one
MISSING, OUTDATED = "text-missing", "translation-outdated"


@dataclass(frozen=True, slots=True)
class Opened:
    """A content file's catalogue in a language, as it lies on the disk."""

    file: str
    language: str
    source: Source
    catalogue: Catalogue
    findings: tuple[Finding, ...]


def opened(root: Path, file: str, language: str) -> Opened | None:
    """The catalogue; None where there is none."""
    path = place(file, language)
    if not (root / path).is_file():
        return None
    source = Source(path, (root / path).read_text(encoding="utf-8", errors="replace"))
    catalogue, faults = read_po(source.text)
    rule = rule_of("catalogue-not-readable")
    starts = source.line_starts
    found = tuple(
        finding(
            rule,
            Hit(_at(source, starts[fault.line - 1] + fault.column - 1), {"what": fault.message}),
        )
        for fault in faults
    )
    return Opened(file, language, source, catalogue, found)


def _at(source: Source, start: int) -> Span:
    return Span(source, min(start, len(source.text)), min(start, len(source.text)))


def checked(one: Opened, segments: Sequence[Segment], content: Content) -> Iterator[Finding]:
    """What all pair checks say of it, and what can't be read in it."""
    yield from one.findings
    if one.findings:
        return
    own = content.settings.languages[0]
    terms = approved(content.terms, own, one.language)
    entries = matched(segments, one.catalogue.entries)
    missing: list[Finding] = []
    for index, segment in enumerate(segments):
        entry = entries.get(index, Entry(segment.text, context=segment.id))
        for found in _pair(one.source, Pair(segment, entry, own, one.language, terms)):
            if found.rule == MISSING:
                missing.append(found)
            else:
                yield found
    if len(missing) <= MOST:
        yield from missing
    else:
        words = text_missing.of_many(len(missing), len(segments), one.language)
        yield finding(rule_of(MISSING), Hit(_at(one.source, 0), words))


def _pair(source: Source, pair: Pair) -> Iterator[Finding]:
    """What was made for another source is out of date, what is not made is missing: neither is a mistake in itself."""
    slips = list(pair_checks.slips(pair))
    alone = OUTDATED if pair.text else MISSING
    for rule, slip in [one for one in slips if one[0] == alone] or slips:
        found = pair_checks.finding(rule, slip, source, pair.entry)
        # a text that its catalogue does not have yet is told where it stands
        yield found if pair.entry.line else replace(found, span=pair.segment.span)
