"""What became of all mutants, counted."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field

from tests.mutation.classes import class_of
from tests.mutation.judging import Bench, Verdict
from tests.mutation.mutants import Mutant

# Rules that ask more of a guide than that the device is right: words of caution, what a kit brings, tests.
ASK_MORE = {
    "caution-missing",
    "caution-late",
    "not-in-kit",
    "look-alike-screws",
    "function-untested",
    "test-after-closing",
}
MISTAKES = {"re-targeted": 2}  # one thing is left undone, another is done that should not be


@dataclass
class Tally:
    """`noticed`: verdicts with findings; `silent`: by class; the other three must stay empty."""

    noticed: list[Verdict] = field(default_factory=list)
    missed: list[Verdict] = field(default_factory=list)
    unexplained: list[Verdict] = field(default_factory=list)
    elsewhere: list[Verdict] = field(default_factory=list)
    silent: dict[str, list[Verdict]] = field(default_factory=lambda: defaultdict(list))

    def add(self, bench: Bench, mutants: Iterable[Mutant]) -> None:
        """Judge these mutants of one guide."""
        written = bench.outcomes(bench.read.guide)
        for mutant in mutants:
            verdict = bench.judge(mutant)
            if verdict.missed:
                self.missed.append(verdict)
            if verdict.elsewhere - ASK_MORE:
                self.elsewhere.append(verdict)
            if verdict.told:
                self.noticed.append(verdict)
            elif not verdict.wrong:
                name = class_of(verdict, written)
                (self.silent[name] if name else self.unexplained).append(verdict)

    @property
    def findings_a_mutant(self) -> float:
        """The mean over the noticed mutants."""
        return sum(len(one.told) for one in self.noticed) / max(1, len(self.noticed))

    @property
    def findings_a_mistake(self) -> float:
        """The same, a re-targeted act counted as the two mistakes that it is."""
        mistakes = sum(MISTAKES.get(one.mutant.how, 1) for one in self.noticed)
        return sum(len(one.told) for one in self.noticed) / max(1, mistakes)
