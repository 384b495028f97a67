"""What the tool tells an author: where, what is wrong, in which configurations, what to do."""

from dataclasses import dataclass
from enum import Enum

from guidebuild.source.edit import Edit
from guidebuild.source.span import Span


class Category(Enum):
    """How sure a rule is, which decides how loud it may be."""

    SAFETY = "safety"  # certain or silent, and someone could be hurt
    CORRECTNESS = "correctness"  # certain or silent
    SUSPICIOUS = "suspicious"  # may be wrong
    TEXT = "text"  # style
    TRANSLATION = "translation"  # catalogues and captions


class Loudness(Enum):
    """What a finding counts as, after the settings had their say."""

    NOTE = "note"
    WARNING = "warning"
    ERROR = "error"


@dataclass(frozen=True, slots=True)
class Related:
    """Another place that matters: "removed here"."""

    span: Span
    words: str


@dataclass(frozen=True, slots=True)
class Told:
    """A set of configurations in the options' own words.

    `words` reads `only when ...` or `except when ...`, or is empty where it holds in all. `count` of
    `total` configurations (after merging) are meant. `full` lists them as (option, values) rows where
    `words` had to be cut short; it is empty otherwise.
    """

    words: str
    count: int
    total: int
    full: tuple[tuple[tuple[str, tuple[str, ...]], ...], ...] = ()


@dataclass(frozen=True, slots=True)
class Finding:
    """One mistake, told once. `message` is one sentence; `help` says what to do."""

    rule: str
    category: Category
    span: Span
    message: str
    help: str
    related: tuple[Related, ...] = ()
    told: Told | None = None
    edits: tuple[Edit, ...] = ()

    @property
    def sort_key(self) -> tuple[str, int, int, str, str]:
        """Order of a report: path, start, end, rule, message."""
        return (*self.span.sort_key, self.rule, self.message)
