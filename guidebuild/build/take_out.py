"""What is to be translated, as files: a catalogue a content file, merged with what is translated already."""

import os
from dataclasses import dataclass
from pathlib import Path, PurePosixPath

from guidebuild.build.catalogue_header import header
from guidebuild.build.catalogues import catalogue_of, place, read_catalogues, sources
from guidebuild.build.trouble import Trouble
from guidebuild.build.whole_file import put_whole
from guidebuild.guide.content import Content
from guidebuild.guide.language.words import count_words
from guidebuild.source.finding import Finding
from guidebuild.translate.captions.budget import with_budget
from guidebuild.translate.catalogue.bring import Status, status
from guidebuild.translate.catalogue.merge import merged, source_hash
from guidebuild.translate.po.entry import Catalogue
from guidebuild.translate.po.writer import write_po
from guidebuild.translate.xliff.shapes import is_language
from guidebuild.translate.xliff.writer import write_old_xliff, write_xliff

_ENDINGS = {"po": ".po", "xliff": ".xlf", "xliff-1.2": ".xlf"}


@dataclass(frozen=True, slots=True)
class Taken:
    """`files`: what was written and where each stands; `findings`: catalogues that could not be read."""

    files: dict[str, Status]
    findings: tuple[Finding, ...]


def now(
    root: Path, content: Content, language: str
) -> tuple[dict[str, Catalogue], tuple[Finding, ...]]:
    """Content file -> its catalogue as of now, in memory."""
    texts = sources(content)
    read = read_catalogues(root, language, texts)
    own = content.settings.languages[0]
    found = {}
    for file, some in texts.items():
        before = catalogue_of(read.catalogues, file)
        issue, source = _name(content, file), source_hash(some)
        head = header(before.header, issue, file, source, language, content.settings)
        told = [with_budget(segment, language) for segment in some]
        found[file] = merged(told, before, own, head)
    return found, read.findings


def take_out(root: Path, content: Content, language: str, form: str, out: Path | None) -> Taken:
    """Write the catalogues of a language; a catalogue that can't be read is left as it is, and told."""
    if not is_language(language):
        raise Trouble(f"{language} is no language tag. Write it as in de, pt-BR or zh-Hans.")
    catalogues, findings = now(root, content, language)
    broken = {finding.span.source.path for finding in findings}
    own = content.settings.languages[0]
    files = {}
    for file, catalogue in catalogues.items():
        if place(file, language) in broken:
            continue
        path = _path(root, file, language, form, out)
        put_whole(path, _text(catalogue, file, own, language, form).encode())
        files[os.path.relpath(path).replace(os.sep, "/")] = status(catalogue, count_words)
    return Taken(files, findings)


def _path(root: Path, file: str, language: str, form: str, out: Path | None) -> Path:
    if form == "po" and out is None:
        return root / place(file, language)
    name = PurePosixPath(language, file).with_suffix(_ENDINGS[form])
    return (out or Path("translations-out")) / name


def _text(catalogue: Catalogue, file: str, own: str, language: str, form: str) -> str:
    match form:
        case "xliff":
            return write_xliff(catalogue, file, own, language)
        case "xliff-1.2":
            return write_old_xliff(catalogue, file, own, language)
        case _:
            return write_po(catalogue)


def write_catalogue(root: Path, file: str, language: str, catalogue: Catalogue) -> None:
    """Put a content file's catalogue in its place."""
    put_whole(root / place(file, language), write_po(catalogue).encode())


def _name(content: Content, file: str) -> str:
    """The guide's number and issue, or nothing for what has none."""
    for one in content.guides:
        if one.guide.path == file and one.guide.number and one.guide.issue:
            return f"{one.guide.number.text} {one.guide.issue.text}"
    return ""
