"""A mutant before two judges: the plain simulator, which is the truth, and all rules that may speak."""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from guidebuild.build import rulebook
from guidebuild.guide.configurations import Configurations, configurations
from guidebuild.guide.content import Content, GuideRead
from guidebuild.guide.guide import Guide
from guidebuild.proof.prove import prove
from guidebuild.source.finding import Category
from tests.mutation.mutants import Mutant
from tests.proof.oracle.facts import Outcome
from tests.proof.oracle.simulate import simulate

CERTAIN = (Category.SAFETY, Category.CORRECTNESS)


@dataclass(frozen=True)
class Verdict:
    """`wrong`: configurations that the simulator finds fault with; `told`: rule -> configurations, once a finding.

    `outcomes`: what the simulator shows, by number of the configuration.
    """

    mutant: Mutant
    wrong: frozenset[int]
    told: tuple[tuple[str, frozenset[int]], ...]
    outcomes: dict[int, Outcome]

    @property
    def missed(self) -> frozenset[int]:
        """Configurations that are wrong and that nothing speaks of."""
        return self.wrong - frozenset().union(*(where for _, where in self.told))

    @property
    def elsewhere(self) -> frozenset[str]:
        """Rules that speak in a configuration in which the device and every act are right."""
        return frozenset(rule for rule, where in self.told if where - self.wrong)


@dataclass(frozen=True)
class Bench:
    """A demo guide with its device, among its content."""

    content: Content
    read: GuideRead

    def judge(self, mutant: Mutant) -> Verdict:
        """Both judges, in every configuration."""
        outcomes = self.outcomes(mutant.guide)
        wrong = frozenset(number for number, one in outcomes.items() if one.facts)
        return Verdict(mutant, wrong, tuple(self.told(mutant.guide)), outcomes)

    def outcomes(self, guide: Guide) -> dict[int, Outcome]:
        """What the simulator shows, by number of the configuration."""
        numbered = self.numbered()
        answers = {
            number: {option: values[0] for option, values in numbered.answers(number).items()}
            for number in range(numbered.total)
        }
        return {number: simulate(guide, self.read.device, one) for number, one in answers.items()}

    def numbered(self) -> Configurations:
        """The configurations of the guide as it was written; a mutant may ask fewer questions."""
        return configurations(self.read.guide, self.read.device)

    def told(self, guide: Guide) -> Iterable[tuple[str, frozenset[int]]]:
        """What the certain rules say, one by one."""
        proof = prove(guide, self.read.device)
        alone = replace(self.content, guides=(replace(self.read, guide=guide),))
        for rule in rulebook.entries():
            for hit in rule.hits(proof, alone) if rule.category in CERTAIN else ():
                where = proof.configurations.everywhere if hit.where is None else hit.where
                if where:
                    yield rule.name, self.same(where, proof.configurations)

    def same(self, where: int, others: Configurations) -> frozenset[int]:
        """A mutant's set in the numbers of the guide as it was written."""
        mine = self.numbered()
        found = set()
        for number in range(mine.total):
            answers = mine.answers(number)
            for other in range(others.total):
                there = others.answers(other)
                if where >> other & 1 and all(
                    set(values) & set(there[option]) for option, values in answers.items()
                ):
                    found.add(number)
        return frozenset(found)
