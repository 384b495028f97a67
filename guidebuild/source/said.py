"""A word or sentence of the author's that remembers where it stands."""

from dataclasses import dataclass, field

from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Said:
    """What the author wrote: an id, a name, a sentence. Two are equal when their text is."""

    text: str
    span: Span = field(compare=False)

    def __str__(self) -> str:
        return self.text
