"""One walk over everything that an author wrote: it takes the texts out, and it puts translations in.

Both ways use the same walk, so that nothing can be taken out that does not come back, or the other way round.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from guidebuild.guide.prose import Bullets, Paragraph, Prose, Quote
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.translate.segments.codes import Coded, escaped
from guidebuild.translate.segments.cut import changed
from guidebuild.translate.segments.segment import Segment, Timed, Weight

# A segment to its translation; None leaves the source text.
Translate = Callable[[Segment], str | None]


@dataclass(slots=True)
class Slots:
    """Where the walk stands: the file, the step or entry, and what is told to the translator there."""

    translate: Translate
    file: str = ""
    place: str = ""
    notes: tuple[str, ...] = ()
    weight: Weight = Weight.TEXT
    signal: str = ""
    timed: Timed | None = None

    def said(self, said: Said, slot: str, *, many: bool = False, most: int | None = None) -> Said:
        """A value of YAML, a title or a name: one segment."""
        if not said.text.strip():
            return said
        weight = Weight.NAME if slot == "name" else self.weight
        told = self._told(Coded(escaped(said.text)), said.span, slot, many, weight, most)
        return said if told is None else Said(plain(told), said.span)

    def coded(self, coded: Coded, span: Span, slot: str, *, many: bool) -> str | None:
        """A text that has its codes already; None leaves the source."""
        return self._told(coded, span, slot, many, self.weight, None)

    def maybe(self, said: Said | None, slot: str) -> Said | None:
        """The same for what may be missing."""
        return None if said is None else self.said(said, slot)

    def all(self, several: Sequence[Said], slot: str) -> tuple[Said, ...]:
        """Several sentences in one slot."""
        return tuple(self.said(one, slot, many=True) for one in several)

    def prose(self, block: Prose, slot: str = "text") -> Prose:
        """Paragraphs, lists and quotations: a segment a sentence."""
        match block:
            case Paragraph():
                return changed(
                    block,
                    lambda coded, span: self._told(coded, span, slot, True, self.weight, None),
                )
            case Bullets(ordered, items, span):
                inner = tuple(tuple(self.prose(one, slot) for one in item) for item in items)
                return Bullets(ordered, inner, span)
            case Quote(inside, span):
                return Quote(tuple(self.prose(one, slot) for one in inside), span)

    def _told(
        self, coded: Coded, span: Span, slot: str, many: bool, weight: Weight, most: int | None
    ) -> str | None:
        segment = Segment(
            file=self.file,
            place=self.place,
            slot=slot,
            text=coded.text,
            span=span,
            codes=coded.codes,
            weight=weight,
            signal=self.signal,
            notes=self.notes,
            most=most,
            many=many,
            timed=self.timed,
        )
        return self.translate(segment)


def plain(coded: str) -> str:
    """Text without codes as the reader sees it."""
    return coded.replace("&lt;", "<").replace("&amp;", "&")
