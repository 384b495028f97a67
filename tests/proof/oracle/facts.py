"""What the simulator has to say, in a form that can be laid beside what `prove` says."""

from dataclasses import dataclass, field
from typing import NamedTuple

from tests.proof.oracle.moment import Moment
from tests.proof.oracle.sets import Maybe


class Fact(NamedTuple):
    """One mistake. `kind`: unmet, parting, ending. `place`: offset of the word, or of the fork."""

    kind: str
    what: str  # the need; `because`; nothing
    thing: str
    step: str = ""
    place: int = -1
    after: str = ""  # the remedy after which alone it shows


@dataclass
class Detail:
    """What belongs to a fact: what is to blame, the states found or wanted or met."""

    blames: frozenset[str] = frozenset()
    found: Maybe = frozenset()
    other: Maybe = frozenset()

    def joined(self, more: "Detail") -> "Detail":
        """What belongs to the same mistake in two configurations."""
        return Detail(self.blames | more.blames, self.found | more.found, self.other | more.other)


@dataclass
class Facts:
    """Facts with their details. A mistake is told once, by the walk that first shows it."""

    all: dict[Fact, Detail] = field(default_factory=dict)
    known: set[Fact] = field(default_factory=set)

    def tell(self, fact: Fact, detail: Detail) -> None:
        """Once for each mistake, whichever remedy it shows after."""
        mistake = fact._replace(after="")
        if mistake not in self.known:
            self.known.add(mistake)
            self.all[fact] = detail

    def tell_all(self, facts: dict[Fact, Detail]) -> None:
        """Several."""
        for fact, detail in facts.items():
            self.tell(fact, detail)


@dataclass
class Passed:
    """A step in this configuration: the states before and after it, None where it is not shown."""

    before: Moment
    after: Moment


@dataclass
class Outcome:
    """All that one configuration shows."""

    facts: dict[Fact, Detail]
    start: Moment
    end: Moment
    steps: dict[str, Passed]
    entries: set[tuple[int, str, str]]  # (offset of the check, step, remedy)
