"""`allow: {rule: reason}`: which findings it silences, and what is said about an allow itself."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, TypeAlias

from guidebuild.build import rulebook
from guidebuild.build.outcome import Outcome
from guidebuild.build.tell import finding
from guidebuild.proof.hit import Hit
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Finding, Loudness

if TYPE_CHECKING:
    from guidebuild.guide.guide import Allow

Key: TypeAlias = tuple[str, int, int]
NEVER = frozenset({"allow-unknown", "allow-without-reason", "allow-not-needed"})


@dataclass(slots=True)
class Silence:
    """Which allows silenced something, over all guides: one in a shared stage is met in each of them."""

    used: set[Key] = field(default_factory=set)

    def heard(self, outcome: Outcome) -> Iterator[Slip]:
        """The guide's slips that no allow of it silences."""
        for slip in outcome.slips:
            covering = [allow for allow in outcome.allows if _covers(allow, slip, outcome)]
            self.used.update(allow.rule.span.sort_key for allow in covering)
            if not covering:
                yield slip


def _covers(allow: "Allow", slip: Slip, outcome: Outcome) -> bool:
    """Whether an allow is about this slip; one in the front matter covers shared stages too."""
    found = slip.finding
    if allow.rule.text != found.rule or found.rule in NEVER:
        return False
    over = allow.over.sort_key
    if over == outcome.whole:
        return True
    path, start, end = found.span.sort_key
    return path == over[0] and over[1] <= start and end <= over[2]


def about_allows(outcomes: Iterable[Outcome], silence: Silence, whole: bool) -> Iterator[Slip]:
    """What is wrong with the allows themselves, each told once.

    `whole`: all guides were checked; else an allow in a shared stage may be needed by one that was not.
    """
    told: set[Key] = set()
    for outcome in outcomes:
        for allow in outcome.allows:
            key = allow.rule.span.sort_key
            needed = key in silence.used or not (whole or key[0] == outcome.path)
            if key not in told and (found := _about(allow, needed)):
                yield Slip(found, Loudness.ERROR, (outcome.path,))
            told.add(key)


def _about(allow: "Allow", needed: bool) -> Finding | None:
    """The first thing wrong with an allow."""
    rule = allow.rule.text
    if rule not in rulebook.names():
        return _finding("allow-unknown", allow)
    if not allow.reason.text.strip():
        return _finding("allow-without-reason", allow)
    return None if needed else _finding("allow-not-needed", allow)


def _finding(name: str, allow: "Allow") -> Finding:
    rule = allow.rule.text
    near = rulebook.nearest(rule)
    words = {"rule": rule, "do": f"write `{near}`" if near else "take it out"}
    return finding(rulebook.entry(name), Hit(allow.rule.span, words))
