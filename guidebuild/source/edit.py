"""A change to an author's file that a finding may offer."""

from dataclasses import dataclass

from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Edit:
    """Put `text` where `span` stands; an empty span inserts."""

    span: Span
    text: str
