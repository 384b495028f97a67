"""Every sentence of a guide that its author wrote, with its place and its sort."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum
from functools import lru_cache

from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import items
from guidebuild.guide.language.places import span_in
from guidebuild.guide.language.sentences import sentences
from guidebuild.guide.prose import Bullets, Paragraph, Prose, Quote
from guidebuild.guide.step import Item, Step
from guidebuild.source.remembered import remembered
from guidebuild.source.said import Said
from guidebuild.source.span import Span


class Sort(Enum):
    """Where a sentence stands, which decides what may be asked of it."""

    STEP = "step"  # between the acts
    INTRO = "intro"
    CAUTION = "caution"
    NOTE = "note"  # `note` and `if-stuck` of an act or check
    CHECK = "check"  # what to expect


@dataclass(frozen=True, slots=True)
class Sentence:
    """`text` without markup; `at` gives the author's characters behind a piece of it."""

    text: str
    sort: Sort
    step: Step | None
    source: Paragraph | Said
    offset: int  # of the sentence in the text of `source`

    def at(self, start: int = 0, end: int | None = None) -> Span:
        """The place of `text[start:end]` in the author's file."""
        last = len(self.text) if end is None else end
        if isinstance(self.source, Paragraph):
            return span_in(self.source, self.offset + start, self.offset + last)
        return _in_said(self.source, self.offset + start, self.offset + last)


def _in_said(said: Said, start: int, end: int) -> Span:
    """A place in a YAML value: exact in a plain or plainly quoted one, else the whole value."""
    written = said.span.text
    quoted = written[:1] in ('"', "'") and written[1:-1] == said.text
    if not quoted and written != said.text:
        return said.span
    first = said.span.start + quoted
    return Span(said.span.source, first + start, first + end)


@remembered
def spoken(guide: Guide) -> tuple[Sentence, ...]:
    """All sentences in document order."""
    return tuple(_spoken(guide))


def _spoken(guide: Guide) -> Iterator[Sentence]:
    for block in guide.intro:
        yield from _prose(block, Sort.INTRO, None)
    for step in guide.steps:
        for item in items(step):
            yield from _item(item, step)


def paragraphs(guide: Guide) -> Iterator[Paragraph]:
    """All paragraphs of prose in document order, those in lists too."""
    blocks: list[Prose] = list(guide.intro)
    for step in guide.steps:
        blocks += [one for one in items(step) if isinstance(one, Paragraph | Bullets | Quote)]
    for block in blocks:
        yield from _paragraphs(block)


def _item(item: Item, step: Step) -> Iterator[Sentence]:
    match item:
        case Paragraph() | Bullets() | Quote():
            yield from _prose(item, Sort.STEP, step)
        case Act(note=note, if_stuck=stuck):
            if note is not None or stuck is not None:
                yield from _said((note, stuck), Sort.NOTE, step)
        case Check(expect=expect, note=note):
            yield from _said((expect,), Sort.CHECK, step)
            yield from _said((note,), Sort.NOTE, step)
        case Caution(hazard=hazard, result=result, avoid=avoid):
            yield from _said((hazard, result, *avoid), Sort.CAUTION, step)
        case _:
            pass


def _prose(block: Prose, sort: Sort, step: Step | None) -> Iterator[Sentence]:
    for paragraph in _paragraphs(block):
        text = paragraph.text
        for start, words in _sentences(text):
            yield Sentence(words, sort, step, paragraph, start)


def _paragraphs(block: Prose) -> Iterator[Paragraph]:
    match block:
        case Paragraph():
            yield block
        case Bullets(items=inside):
            for item in inside:
                for inner in item:
                    yield from _paragraphs(inner)
        case Quote(inside=inside):
            for inner in inside:
                yield from _paragraphs(inner)


def _said(all_said: tuple[Said | None, ...], sort: Sort, step: Step) -> Iterator[Sentence]:
    for said in all_said:
        if said is not None:
            for start, words in _sentences(said.text):
                yield Sentence(words, sort, step, said, start)


@lru_cache(maxsize=4096)
def _sentences(text: str) -> tuple[tuple[int, str], ...]:
    """Each sentence and where it begins: the same object again for the same words, which is known at once."""
    return tuple([(start, text[start:end]) for start, end in sentences(text)])
