"""How loud each rule is: by its category, unless the content's settings say otherwise."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from guidebuild.source.finding import Category, Loudness

USUAL = {
    Category.SAFETY: Loudness.ERROR,
    Category.CORRECTNESS: Loudness.ERROR,
    Category.SUSPICIOUS: Loudness.WARNING,
    Category.TEXT: Loudness.WARNING,
    Category.TRANSLATION: Loudness.WARNING,
}
OFF = "off"


@dataclass(frozen=True, slots=True)
class Loudnesses:
    """`told`: rule -> status of a guide -> off, note, warning or error; the status "" is for all others."""

    told: Mapping[str, Mapping[str, str]] = field(default_factory=dict)

    def of(self, rule: str, category: Category, status: str) -> Loudness | None:
        """How loud the rule is in a guide of this status; None where it is off."""
        by_status = self.told.get(rule, {})
        word = by_status.get(status) or by_status.get("")
        if word is None:
            return USUAL[category]
        return None if word == OFF else Loudness(word)
