"""Whether the fuzz notices a breakage, and how soon. The cases and what the oracle says of them are kept."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cache
from itertools import chain

from guidebuild.device.record import Device
from guidebuild.guide.guide import Guide
from tests.proof.breakages.breakage import Breakage, broken
from tests.proof.breakages.sharp import SHARP
from tests.proof.fuzz.case import Case, case
from tests.proof.fuzz.dice import seeded
from tests.proof.oracle.conditions import Answers
from tests.proof.oracle.facts import Outcome
from tests.proof.oracle.simulate import simulate

CASES = 3000  # tried before a breakage counts as unnoticed

_known: dict[tuple[int, tuple[tuple[str, str], ...]], Outcome] = {}


@cache
def _sharp_case(seed: int) -> Case:
    return case(seeded(seed))


@dataclass(frozen=True)
class Notice:
    """The first case in which the two disagree, and the first words about it."""

    case: int
    words: str


def noticed(breakage: Breakage, seeds: Iterable[int] = ()) -> Notice | None:
    """None where they never disagree. Asked without seeds: first the sharp ones, then one after the other."""
    with broken(breakage) as compare:
        for seed in seeds or chain(SHARP, range(CASES)):
            try:
                words = next(compare.disagreements(*_known_by_heart(seed)), None)
            except Exception as error:  # it falls over: that is noticed, too
                words = f"{type(error).__name__}: {error}"
            if words is not None:
                return Notice(seed, words)
    return None


def _known_by_heart(seed: int) -> tuple[Case, Callable[[Guide, Device, Answers], Outcome]]:
    """A case, and the simulator, which remembers what it said of the sharp ones."""
    if seed not in SHARP:
        return case(seeded(seed)), simulate

    def recall(guide: Guide, device: Device, answers: Answers) -> Outcome:
        slot = (seed, tuple(answers.items()))
        if slot not in _known:
            _known[slot] = simulate(guide, device, answers)
        return _known[slot]

    return _sharp_case(seed), recall
