"""Step after step, act after act, as one pair of hands does it."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field

from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.step import Fork, Item, Step
from tests.proof.oracle.checking import ask
from tests.proof.oracle.conditions import holds
from tests.proof.oracle.deeds import Deed, written_out
from tests.proof.oracle.effects import do
from tests.proof.oracle.facts import Detail, Fact, Facts
from tests.proof.oracle.meeting import meet
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.needs import first_unmet
from tests.proof.oracle.sets import ABSENT

EnterRemedies = Callable[[Check, Step, Moment], None]


@dataclass
class Hands:
    """One walk. `after`: the remedy from whose end the rest is walked again; `enter`: what a check does."""

    moment: Moment
    enter: EnterRemedies
    after: str = ""
    facts: Facts = field(default_factory=Facts)

    def step(self, step: Step) -> None:
        """A step that is shown; where it is optional, skipped as well."""
        skipped = self.moment.copy()
        self.flow(whole_flow(self.moment, step), step)
        if step.optional:
            self.moment = meet(self.moment, skipped, self.facts, step.id, -1, self.after)

    def flow(self, items: Iterable[Item | Fork], step: Step) -> None:
        """What stands in a step, in order."""
        answers = self.moment.world.answers
        for item in items:
            match item:
                case Act() if holds(item.when, answers):
                    self.act(item, step)
                case Check() if holds(item.when, answers):
                    ask(self.moment, item, self.facts, step.id, self.after)
                    self.enter(item, step, self.moment)
                case Fork():
                    self.fork(item, step)
                case _:
                    pass

    def fork(self, fork: Fork, step: Step) -> None:
        """Each method that applies, from the same state; they meet one after the other."""
        before, met = self.moment, None
        for method in fork.methods:
            if holds(method.when, before.world.answers):
                self.moment = before.copy()
                self.flow(method.items, step)
                if met is None:
                    met = self.moment
                else:
                    place = fork.span.start
                    met = meet(met, self.moment, self.facts, step.id, place, self.after)
        self.moment = before if met is None else met

    def act(self, act: Act, step: Step) -> None:
        """Word by word; of the words that mean nothing in this configuration, the first is told."""
        deeds = list(written_out(self.moment.world, act, step))
        for deed in [one for one in deeds if one.missing][:1]:
            self._unmet("HERE", deed, Detail(found=ABSENT))
        for deed in deeds:
            if not deed.missing:
                self.deed(deed)

    def deed(self, deed: Deed) -> None:
        """One act on one thing: the first need that fails is told, and it is taken as done."""
        unmet = first_unmet(self.moment, deed)
        if unmet is not None:
            found = self.moment.now[deed.thing]
            self._unmet(unmet[0].name, deed, Detail(frozenset(unmet[1]), found))
        for spare in do(self.moment, deed, unmet):
            self.facts.tell(Fact("ending", "left-over", spare, after=self.after), Detail())

    def _unmet(self, need: str, deed: Deed, detail: Detail) -> None:
        place = deed.word.span.start
        self.facts.tell(Fact("unmet", need, deed.thing, deed.step.id, place, self.after), detail)


def whole_flow(moment: Moment, step: Step) -> list[Item | Fork]:
    """The acts of the step that it repeats, then its own."""
    by_id = {one.id: one for one in moment.world.guide.steps}
    way = [step]
    while (named := way[-1].same_as) is not None:
        repeated = by_id.get(named.text)
        if repeated is None or repeated in way:
            break
        way.append(repeated)
    return [item for one in reversed(way) for item in one.flow]
