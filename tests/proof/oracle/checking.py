"""What a check needs, and where it leads when what it expects is not so."""

from guidebuild.device.record import POWER
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.guide import Guide
from guidebuild.guide.stage import Stage
from guidebuild.proof.mistake import Need
from tests.proof.oracle.facts import Detail, Fact, Facts
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.sets import IN, NOT_IN


def ask(moment: Moment, check: Check, facts: Facts, step: str, after: str) -> None:
    """A powered check needs power; a check of a function needs what carries it; the first that is not right is told."""
    place = check.span.start
    if check.powered and not moment.perhaps(POWER, IN):
        fact = Fact("unmet", Need.POWERED.name, POWER, step, place, after)
        facts.tell(fact, Detail(frozenset({POWER}), moment.now[POWER]))
        moment.forget(POWER)
        return
    tested = {said.text for said in check.tests}
    not_right = [
        link.key
        for link in moment.world.links()
        if tested & {said.text for said in link.carries} and moment.surely(link.key, NOT_IN)
    ]
    if not_right:
        first = not_right[0]
        fact = Fact("unmet", Need.CARRIED.name, first, step, place, after)
        facts.tell(fact, Detail(frozenset(not_right), moment.now[first]))
    for key in not_right:
        moment.forget(key)


def ways_on(guide: Guide, check: Check) -> list[Stage]:
    """The remedies that it names; else, unless it stops, those for what it tests; in the guide's order."""
    remedies = {stage.id: stage for stage in guide.stages if stage.remedy is not None}
    named = [said.text for said in (check.if_not, *(fault.go for fault in check.faults)) if said]
    if named:
        return [stage for stage in remedies.values() if stage.id in named]
    if check.stop is not None:
        return []
    tested = {said.text for said in check.tests}
    return [
        stage
        for stage in remedies.values()
        if stage.remedy and tested & {said.text for said in stage.remedy.functions}
    ]
