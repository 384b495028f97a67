"""What the walk gave for each place: a text that is made of another's words is found again by where these stand."""

from dataclasses import dataclass, field

from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.translate.segments.segment import Segment
from guidebuild.translate.segments.slots import Translate, plain


@dataclass(slots=True)
class Remembering:
    """Answers as `translate` does, and keeps the answers by place."""

    translate: Translate
    _told: dict[Span, str] = field(default_factory=dict)

    def __call__(self, segment: Segment) -> str | None:
        """The translation of a segment."""
        text = self.translate(segment)
        if text is not None:
            self._told[segment.span] = plain(text)
        return text

    def again(self, said: Said) -> Said:
        """A value whose words were translated before; itself where they were not, or are no source's any more."""
        text = self._told.get(said.span)
        return said if text is None else Said(text, said.span)
