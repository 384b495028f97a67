"""Two ways through a step come together."""

from tests.proof.oracle.facts import Detail, Fact, Facts
from tests.proof.oracle.moment import Moment


def meet(first: Moment, second: Moment, facts: Facts, step: str, place: int, after: str) -> Moment:
    """Either may be true from here; what surely differs is told."""
    for key, states in first.now.items():
        other = second.now[key]
        unit, new = first.unit.get(key), second.unit.get(key)
        if not states & other or (unit is not None and new is not None and not unit & new):
            facts.tell(
                Fact("parting", "", key, step, place, after), Detail(found=states, other=other)
            )
    now = {key: states | second.now[key] for key, states in first.now.items()}
    unit_then = {key: unit | second.unit[key] for key, unit in first.unit.items()}
    return Moment(first.world, now, unit_then)
