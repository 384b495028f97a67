"""The captions that lie beside the films of guides, as they are on the disk."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path, PurePosixPath

from guidebuild.build.rulebook import entry as rule_of
from guidebuild.build.tell import finding
from guidebuild.guide.content import Content
from guidebuild.proof.hit import Hit
from guidebuild.source.finding import Finding
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.captions.srt import read_srt
from guidebuild.translate.webvtt.cue import Captions
from guidebuild.translate.webvtt.reader import read_webvtt

FILMS = (".webm", ".mp4", ".m4v", ".mov")
FORMS = (".vtt", ".srt")
NOTHING = Captions("", (), (), ())
LARGEST = 4 * 2**20  # bytes: captions of a film of hours are a tenth of it


@dataclass(frozen=True, slots=True)
class Captioned:
    """A film (content path) with its captions and the file that they were read from."""

    film: str
    source: Source
    captions: Captions
    findings: tuple[Finding, ...] = ()


def captioned(content: Content, folder: str = "") -> Iterator[Captioned]:
    """Every film that has captions beside it, in the whole content or in one guide's folder."""
    for film in sorted(content.files):
        if film.startswith(f"{folder}/" if folder else "guides/") and film.lower().endswith(FILMS):
            stem = PurePosixPath(film).with_suffix("")
            beside = (f"{stem}{form}" for form in FORMS)
            file = next((one for one in beside if one in content.files), None)
            if file is not None:
                yield _opened(Path(content.root), film, file)


def _opened(root: Path, film: str, file: str) -> Captioned:
    if (root / file).stat().st_size > LARGEST:
        what, do = "the file is larger than captions can be", "split the film"
        return _bad(film, Source(file, ""), 0, what, do)
    text = (root / file).read_bytes().decode("utf-8", "replace")
    return read(film, Source(file, text))


def read(film: str, source: Source) -> Captioned:
    """The captions in a file, by its ending."""
    if source.path.endswith(".srt"):
        captions, faults = read_srt(source.text)
        if not faults:
            return Captioned(film, source, captions)
        start = source.line_starts[min(faults[0].line, len(source.line_starts)) - 1]
        return _bad(film, source, start, faults[0].message, "mend this block, or take it out")
    vtt = read_webvtt(source.text)
    if vtt is not None:
        return Captioned(film, source, vtt)
    what, do = "the first line is not `WEBVTT`", "write `WEBVTT` into the first line"
    return _bad(film, source, 0, what, do)


def _bad(film: str, source: Source, start: int, what: str, do: str) -> Captioned:
    hit = Hit(Span(source, start, start), {"what": what, "do": do})
    return Captioned(film, source, NOTHING, (finding(rule_of("captions-not-readable"), hit),))
