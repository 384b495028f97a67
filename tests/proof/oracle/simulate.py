"""One configuration from start to end: the main way, then each remedy, then what follows a remedy."""

from dataclasses import dataclass, field

from guidebuild.device.record import Device
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.guide import Guide
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Step
from tests.proof.oracle.checking import ways_on
from tests.proof.oracle.conditions import Answers, holds
from tests.proof.oracle.ending import endings, open_to_the_hand
from tests.proof.oracle.facts import Facts, Outcome, Passed
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.start import start
from tests.proof.oracle.walk import EnterRemedies, Hands
from tests.proof.oracle.world import World


def simulate(guide: Guide, device: Device, answers: Answers) -> Outcome:
    """Everything that this configuration shows."""
    return _Simulation(World(guide, device, answers)).run()


@dataclass
class _Visit:
    """A remedy entered from a check, in the state found there."""

    remedy: Stage
    moment: Moment


@dataclass
class _Simulation:
    world: World
    facts: Facts = field(default_factory=Facts)
    steps: dict[str, Passed] = field(default_factory=dict)
    main_way: dict[str, Moment] = field(default_factory=dict)  # before each step, shown or not
    seen: set[str] = field(default_factory=set)
    waiting: list[_Visit] = field(default_factory=list)
    entries: set[tuple[int, str, str]] = field(default_factory=set)
    walked: set[tuple[int, str, str]] = field(default_factory=set)

    def run(self) -> Outcome:
        beginning = start(self.world)
        hands = Hands(beginning.copy(), self.enter_from(None), facts=self.facts)
        for stage, step in self.main_steps():
            self.main_way[step.id] = hands.moment.copy()
            if self.shown(stage, step):
                self.walk(hands, step)
                self.seen |= open_to_the_hand(hands.moment)
        self.facts.tell_all(endings(beginning, hands.moment, self.seen))
        end = hands.moment.copy()
        while self.waiting:
            self.remedy(self.waiting.pop(0), beginning)
        return Outcome(self.facts.all, beginning, end, self.steps, self.entries)

    def main_steps(self) -> list[tuple[Stage, Step]]:
        stages = [stage for stage in self.world.guide.stages if stage.remedy is None]
        return [(stage, step) for stage in stages for step in stage.steps]

    def shown(self, stage: Stage, step: Step) -> bool:
        """A remedy has no condition of its own: its check leads there."""
        answers = self.world.answers
        return (stage.remedy is not None or holds(stage.when, answers)) and holds(
            step.when, answers
        )

    def walk(self, hands: Hands, step: Step) -> None:
        """A step, kept as it was first walked."""
        before = hands.moment.copy()
        hands.step(step)
        self.steps.setdefault(step.id, Passed(before, hands.moment.copy()))

    def enter_from(self, inside: _Visit | None) -> EnterRemedies:
        """What a check does, on the main way or inside a remedy."""

        def enter(check: Check, step: Step, moment: Moment) -> None:
            for remedy in ways_on(self.world.guide, check):
                entry = (check.span.start, step.id, remedy.id)
                self.entries.add(entry)
                again = inside is not None and inside.remedy.id == remedy.id
                if again and inside is not None and moment.within(inside.moment):
                    continue
                if entry not in self.walked:
                    self.walked.add(entry)
                    self.waiting.append(_Visit(remedy, moment.copy()))

        return enter

    def remedy(self, visit: _Visit, beginning: Moment) -> None:
        hands = Hands(visit.moment.copy(), self.enter_from(visit), facts=self.facts)
        for step in visit.remedy.steps:
            if self.shown(visit.remedy, step):
                self.walk(hands, step)
        resume = visit.remedy.remedy.resume if visit.remedy.remedy else None
        if resume is None or resume.text not in self.main_way:
            return
        if not hands.moment.within(self.main_way[resume.text]):
            self.rest(hands.moment, resume.text, visit.remedy.id, beginning)

    def rest(self, moment: Moment, resume: str, after: str, beginning: Moment) -> None:
        """The procedure from `resume` on, in a state that the main way does not know."""
        hands = Hands(moment, lambda check, step, moment: None, after, Facts())
        steps = self.main_steps()
        ids = [step.id for _, step in steps]
        seen = set(self.seen)
        for stage, step in steps[ids.index(resume) :]:
            if self.shown(stage, step):
                hands.step(step)
                seen |= open_to_the_hand(hands.moment)
        last = endings(beginning, hands.moment, seen)
        self.facts.tell_all(hands.facts.all)
        self.facts.tell_all({fact._replace(after=after): one for fact, one in last.items()})
