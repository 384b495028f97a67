"""Whether the fuzz notices a breakage, and how soon. The cases and what the oracle says of them are kept."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache

from guidebuild.device.record import Device
from guidebuild.guide.guide import Guide
from tests.proof.breakages.breakage import Breakage, broken
from tests.proof.fuzz.case import Case, case
from tests.proof.fuzz.dice import seeded
from tests.proof.oracle.conditions import Answers
from tests.proof.oracle.facts import Outcome
from tests.proof.oracle.simulate import simulate

CASES = 1500  # tried before a breakage counts as unnoticed

_known: dict[tuple[str, tuple[tuple[str, str], ...]], Outcome] = {}


@cache
def kept_case(seed: int) -> Case:
    """The same object each time, so that what is known of it is found again."""
    return case(seeded(seed))


@dataclass(frozen=True)
class Notice:
    """The first case in which the two disagree, and the first words about it."""

    case: int
    words: str


def noticed(breakage: Breakage, most: int = CASES) -> Notice | None:
    """None where they never disagree."""
    with broken(breakage) as compare:
        for seed in range(most):
            try:
                words = next(compare.disagreements(kept_case(seed), _recall(seed)), None)
            except Exception as error:  # it falls over: that is noticed, too
                words = f"{type(error).__name__}: {error}"
            if words is not None:
                return Notice(seed, words)
    return None


def _recall(seed: int) -> Callable[[Guide, Device, Answers], Outcome]:
    def recall(guide: Guide, device: Device, answers: Answers) -> Outcome:
        slot = (str(seed), tuple(answers.items()))
        found = _known.get(slot)
        if found is None:
            found = _known[slot] = simulate(guide, device, answers)
        return found

    return recall
