"""Two ways through a step come together."""

from tests.proof.oracle.facts import Detail, Fact, Facts
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.sets import IN

OLD = frozenset({"old"})


def meet(first: Moment, second: Moment, facts: Facts, step: str, place: int, after: str) -> Moment:
    """Either may be true from here; what surely differs is told."""
    for key, states in first.now.items():
        other = second.now[key]
        if not states & other:
            told = Detail(found=states, other=other)
        elif _one_old_one_new(first.unit.get(key, OLD), second.unit.get(key, OLD)):
            told = Detail(found=IN, other=IN)  # the old unit by one way, the new one by the other
        else:
            continue
        facts.tell(Fact("parting", "", key, step, place, after), told)
    now = {key: states | second.now[key] for key, states in first.now.items()}
    unit_then = {key: unit | second.unit[key] for key, unit in first.unit.items()}
    return Moment(first.world, now, unit_then)


def _one_old_one_new(first: frozenset[str], second: frozenset[str]) -> bool:
    return (first == OLD and not second & OLD) or (second == OLD and not first & OLD)
