"""The author's sentences between the acts, with every run of text in its place."""

from dataclasses import dataclass, field
from typing import TypeAlias

from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Run:
    """Text under the same marks (`strong`, `emphasis`, `code`); `href` of a link; a hard break is "\\n".

    `text` is what the reader sees; `span` is where it stands in the file (with its escapes).
    """

    text: str
    span: Span = field(compare=False)
    marks: frozenset[str] = frozenset()
    href: str | None = None


@dataclass(frozen=True, slots=True)
class Paragraph:
    """One paragraph."""

    runs: tuple[Run, ...]
    span: Span = field(compare=False)

    @property
    def text(self) -> str:
        """The paragraph as plain text."""
        runs = self.runs
        return runs[0].text if len(runs) == 1 else "".join([run.text for run in runs])


@dataclass(frozen=True, slots=True)
class Bullets:
    """A list, ordered or not; each item is blocks."""

    ordered: bool
    items: tuple[tuple["Prose", ...], ...]
    span: Span = field(compare=False)


@dataclass(frozen=True, slots=True)
class Quote:
    """A block quotation."""

    inside: tuple["Prose", ...]
    span: Span = field(compare=False)


@dataclass(frozen=True, slots=True)
class Picture:
    """A picture in its own paragraph; `file` relative to the guide's folder, resolved by `path`."""

    file: Said
    path: str  # relative to the content folder
    alt: Said
    span: Span = field(compare=False)


Prose: TypeAlias = Paragraph | Bullets | Quote
