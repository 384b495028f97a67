"""Everything that a report tells, as one value."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, field

from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Category, Loudness


@dataclass(frozen=True, slots=True)
class Card:
    """What a rule says of itself: `summary` is one line, `why` paragraphs, `source` of its figures."""

    name: str
    category: Category
    summary: str
    why: str
    source: str
    message: str
    help: str


@dataclass(frozen=True, slots=True)
class Fault:
    """A mistake of our own: the rule (or the room) that fell over, at which file, and how.

    `what` is one line without any path of this machine; `trace` is the whole story for whoever mends it.
    """

    rule: str
    path: str
    what: str
    trace: str = ""


@dataclass(frozen=True, slots=True)
class Report:
    """`prefix`: the way from where the command was given to the content folder, with `/`, or empty.

    `guides` and `configurations`: what was proved; `unproved`: guides that could not be read as a whole.
    `known` counts what an earlier report told already.
    """

    version: str
    slips: tuple[Slip, ...] = ()
    faults: tuple[Fault, ...] = ()
    guides: tuple[str, ...] = ()
    unproved: tuple[str, ...] = ()
    configurations: int = 0
    cards: Mapping[str, Card] = field(default_factory=dict)
    prefix: str = ""
    known: int = 0

    def path(self, content_path: str) -> str:
        """A content path as seen from where the command was given."""
        return f"{self.prefix}/{content_path}" if self.prefix else content_path

    @property
    def counts(self) -> Counter[Loudness]:
        """How many slips of each loudness."""
        return Counter(slip.loudness for slip in self.slips)

    @property
    def clean(self) -> bool:
        """Whether nothing was found that must be looked at; a note does not count."""
        return not any(slip.loudness is not Loudness.NOTE for slip in self.slips)
