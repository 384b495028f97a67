"""A guide and the stages that it shares, in every language of the settings."""

from collections.abc import Iterator, Sequence
from pathlib import Path

from guidebuild.build.catalogues import has_catalogue
from guidebuild.build.languages.catalogue import MISSING, checked, opened
from guidebuild.build.languages.films import of_films
from guidebuild.build.languages.rename import of_steps
from guidebuild.build.languages.wanted import spoken
from guidebuild.build.rulebook import entry as rule_of
from guidebuild.build.tell import finding
from guidebuild.guide.content import Content, GuideRead
from guidebuild.proof.hit import Hit
from guidebuild.source.finding import Finding
from guidebuild.source.span import Span
from guidebuild.translate.checks import text_missing
from guidebuild.translate.po.entry import Entry
from guidebuild.translate.segments.segment import Segment
from guidebuild.translate.segments.take import segments


def of_guide(each: GuideRead, content: Content) -> Iterator[Finding]:
    """What the rules about translations say of one guide; what it draws on is told with what no guide is."""
    root = Path(content.root)
    texts = _by_file(segments(each.guide))
    known: dict[str, dict[str, Sequence[Entry]]] = {}
    there: list[str] = []
    for language in spoken(content):
        if not has_catalogue(root, each.guide.path, language):
            yield _missing(each.guide.title.span, "this guide", language)
            continue
        there.append(language)
        for file, some in texts.items():
            one = opened(root, file, language)
            if one is None:
                yield _missing(some[0].span, f"`{file}`", language)
                continue
            yield from checked(one, some, content)
            known.setdefault(file, {})[language] = one.catalogue.entries
        yield from _drawn_on(each, root, language)
    yield from of_steps(each.guide, texts, known)
    yield from of_films(each.guide.path.removesuffix(".md"), content, there)


def _drawn_on(each: GuideRead, root: Path, language: str) -> Iterator[Finding]:
    """Records and kits of a guide that has a page in the language, and that are not translated at all."""
    used = [*segments(each.device), *(one for use in each.guide.kits for one in segments(use.kit))]
    for file, some in _by_file(used).items():
        if not has_catalogue(root, file, language):
            yield _missing(some[0].span, f"`{file}`", language)


def _missing(span: Span, what: str, language: str) -> Finding:
    return finding(rule_of(MISSING), Hit(span, text_missing.of_all(what, language)))


def _by_file(some: Sequence[Segment]) -> dict[str, list[Segment]]:
    found: dict[str, list[Segment]] = {}
    for segment in some:
        found.setdefault(segment.file, []).append(segment)
    return found
