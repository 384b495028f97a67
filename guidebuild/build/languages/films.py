"""Captions of a guide's films against the limits of each language, and their catalogues."""

from collections.abc import Iterator, Mapping
from pathlib import Path

from guidebuild.build.captions import Captioned, captioned
from guidebuild.build.languages.catalogue import MISSING, Opened, checked, opened
from guidebuild.build.pair_checks import having, place
from guidebuild.build.rulebook import entry as rule_of
from guidebuild.build.tell import finding
from guidebuild.guide.content import Content
from guidebuild.proof.hit import Hit
from guidebuild.source.finding import Finding
from guidebuild.source.span import Span
from guidebuild.translate.captions.walk import caption_segments, caption_texts, span_of
from guidebuild.translate.catalogue.match import matched
from guidebuild.translate.checks import text_missing
from guidebuild.translate.po.entry import Entry
from guidebuild.translate.segments.segment import Segment
from guidebuild.translate.segments.slots import Slots
from guidebuild.translate.webvtt.cue import Captions

OF_TIMES = frozenset(
    {"caption-overlaps"}
)  # told of the source: times are the same in every language


def of_films(folder: str, content: Content, languages: list[str]) -> Iterator[Finding]:
    """What is to be said of the films in a guide's folder: in the source, and in each of these languages."""
    for film in captioned(content, folder):
        yield from film.findings
        yield from _limits(film.captions, content.settings.languages[0], _in_source(film))
        for language in languages:
            yield from _translated(film, content, language)


def _translated(film: Captioned, content: Content, language: str) -> Iterator[Finding]:
    texts = caption_segments(film.captions, film.source)
    one = opened(Path(content.root), film.source.path, language)
    if not texts:
        return
    if one is None:
        words = text_missing.of_all(f"`{film.source.path}`", language)
        yield finding(rule_of(MISSING), Hit(texts[0].span, words))
        return
    yield from checked(one, texts, content)
    entries = {
        texts[index].id: entry for index, entry in matched(texts, one.catalogue.entries).items()
    }
    told = {
        name: entry for name, entry in entries.items() if entry.translations[0] and not entry.fuzzy
    }
    slots = Slots(lambda segment: _said(told, segment))
    translated = caption_texts(film.captions, film.source, slots)
    places = _in_catalogue(film, one, told)
    new = {index: place for index, place in places.items() if place is not None}
    yield from _limits(translated, language, new, OF_TIMES)


def _said(told: Mapping[str, Entry], segment: Segment) -> str | None:
    return told[segment.id].translations[0] if segment.id in told else None


def _in_source(film: Captioned) -> dict[int, Span]:
    return {index: span_of(cue, film.source) for index, cue in enumerate(film.captions.cues)}


def _in_catalogue(
    film: Captioned, one: Opened, told: Mapping[str, Entry]
) -> dict[int, Span | None]:
    """Where each caption's translation stands; None for those that have none."""
    ids: list[str] = []
    caption_texts(film.captions, film.source, Slots(lambda segment: ids.append(segment.id)))
    said = (index for index, cue in enumerate(film.captions.cues) if cue.text.strip())
    entries = ((index, told.get(name)) for index, name in zip(said, ids, strict=True))
    return {
        index: place(one.source, entry, 0, len(entry.translations[0])) if entry else None
        for index, entry in entries
    }


def _limits(
    captions: Captions, language: str, places: Mapping[int, Span], but: frozenset[str] = frozenset()
) -> Iterator[Finding]:
    for rule, module in having("check_captions").items():
        for slip in module.check_captions(captions.cues, language):
            if slip.cue in places and rule not in but:
                yield finding(rule_of(rule), Hit(places[slip.cue], slip.words))
