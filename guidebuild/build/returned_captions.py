"""Captions that a translator sent back as captions, not as a catalogue: laid beside the film's own, one by one."""

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from guidebuild.build.captions import FORMS, Captioned, captioned, read
from guidebuild.build.rulebook import entry as rule_of
from guidebuild.build.tell import finding
from guidebuild.guide.content import Content
from guidebuild.proof.hit import Hit
from guidebuild.source.finding import Finding
from guidebuild.source.text import Source
from guidebuild.translate.captions.coded import coded_cue
from guidebuild.translate.captions.walk import caption_segments, span_of
from guidebuild.translate.checks.caption_timing_changed import check_returned
from guidebuild.translate.po.entry import Catalogue, Entry
from guidebuild.translate.po.header import SOURCE_FILE
from guidebuild.translate.xliff.shapes import is_language


@dataclass(frozen=True, slots=True)
class Laid:
    """A catalogue made of captions; empty, with findings, where they can't be laid beside the film's own."""

    catalogue: Catalogue
    findings: tuple[Finding, ...] = ()


NOTHING = Catalogue({}, (), ())


def is_captions(path: Path) -> bool:
    """Whether a file is captions by its name."""
    return path.suffix.lower() in FORMS


def laid(content: Content, path: Path, source: Source) -> Laid:
    """`film.de.vtt`, or `film.vtt` in a folder `de`, as a catalogue whose header says what it is for."""
    own = _own(content, path)
    language = _language(path, content.settings.languages[1:])
    back = read("", source)
    if back.findings or own is None or not language:
        return Laid(NOTHING, back.findings)
    slips = check_returned(own.captions.cues, back.captions.cues)
    rule, cues = rule_of("caption-timing-changed"), back.captions.cues
    findings = tuple(
        finding(rule, Hit(span_of(cues[slip.cue], source), slip.words)) for slip in slips if cues
    )
    if findings or not cues:
        return Laid(NOTHING, findings)
    header = {SOURCE_FILE: own.source.path, "Language": language}
    return Laid(Catalogue(header, (), tuple(_entries(own, back))))


def _own(content: Content, path: Path) -> Captioned | None:
    """The film's captions by the name of the file."""
    names = {path.stem, path.stem.rpartition(".")[0]}
    return next((one for one in captioned(content) if Path(one.source.path).stem in names), None)


def _language(path: Path, spoken: Sequence[str]) -> str:
    """The end of the name, else the nearest folder that is named as a language of the settings."""
    name = path.stem.rpartition(".")[2] if "." in path.stem else ""
    if is_language(name):
        return name
    return next((one for one in reversed(path.parts[:-1]) if one in spoken), "")


def _entries(own: Captioned, back: Captioned) -> list[Entry]:
    texts = {segment.span: segment for segment in caption_segments(own.captions, own.source)}
    found = []
    for cue, came in zip(own.captions.cues, back.captions.cues, strict=True):
        segment = texts.get(span_of(cue, own.source))
        if segment is not None and came.text.strip():
            said = coded_cue(came.text).text
            found.append(Entry(segment.text, (said,), context=segment.id, line=came.line + 1))
    return found
