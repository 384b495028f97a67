"""Why a mutant that nobody speaks of does no harm. One that fits no class is a hole in the proof."""

from tests.mutation.judging import Verdict
from tests.proof.oracle.ending import wanted
from tests.proof.oracle.facts import Outcome

REASONS = {
    "said twice": "the act may be done again: what is loose, tight, off or offered stays so",
    "redundant pass": "the other acts bring the same about: all can be done, everything ends the same",
    "order without consequence": "both orders can be done, and everything ends the same",
    "before a stop": "the remedy ends there: no act follows, and the unit is handed over as the words say",
    "free at the end": "all can be done; what ends otherwise may end either way: power, and what is filled by use",
}
BY_HOW = {
    "doubled": "said twice",
    "dropped": "redundant pass",
    "swapped": "order without consequence",
}


def class_of(verdict: Verdict, written: dict[int, Outcome]) -> str | None:
    """The class of a silent mutant; `written`: what the guide itself shows. None: not explained."""
    main = {
        (number, key)
        for number, one in verdict.outcomes.items()
        for key, states in one.end.now.items()
        if states != written[number].end.now[key]
    }
    if main:
        free = all(wanted(written[number].start, key) is None for number, key in main)
        return "free at the end" if free else None
    if _stops_otherwise(verdict, written):
        return "before a stop"
    return BY_HOW.get(verdict.mutant.how)


def _stops_otherwise(verdict: Verdict, written: dict[int, Outcome]) -> bool:
    """Whether a remedy that leads nowhere leaves the unit in another state."""
    stops = [one for one in verdict.mutant.guide.stages if one.remedy and one.remedy.stop]
    last = [stage.steps[-1].id for stage in stops if stage.steps]
    return any(
        one.steps[step].after.now != written[number].steps[step].after.now
        for number, one in verdict.outcomes.items()
        for step in last
        if step in one.steps
    )
