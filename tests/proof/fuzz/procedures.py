"""A random procedure for a device: planned, then spoilt, then written as stages, steps and methods."""

from dataclasses import dataclass, field, replace

from guidebuild.device.option import Option
from guidebuild.device.record import Device
from guidebuild.guide.blocks.check import Check, Fault
from guidebuild.guide.stage import Remedy, Stage
from guidebuild.guide.step import Fork, Item, Method, Step
from tests.proof.fuzz.devices import FUNCTIONS
from tests.proof.fuzz.dice import Dice
from tests.proof.fuzz.ink import Ink
from tests.proof.fuzz.mistakes import mistaken
from tests.proof.fuzz.options import condition, perhaps
from tests.proof.fuzz.wishes import Wish, any_wish, written


@dataclass
class Writer:
    """Writes acts into steps. `remedies`: the ids that checks may name."""

    dice: Dice
    ink: Ink
    device: Device
    options: list[Option]
    remedies: list[str]
    ids: list[str] = field(default_factory=list)

    def stages(self, acts: list[Wish]) -> tuple[Stage, ...]:
        """One or two stages of the main way, and the remedies among or after them."""
        dice = self.dice
        cut = dice.below(len(acts) + 1) if dice.often(50) else 0
        main = [self.stage(part) for part in (acts[:cut], acts[cut:]) if part]
        for remedy in self.remedies:
            where = len(main) if dice.often(70) else dice.below(len(main) + 1)
            main.insert(where, self.remedy(remedy))
        return tuple(main)

    def stage(self, acts: list[Wish]) -> Stage:
        when = perhaps(self.dice, self.ink, self.options, 8)
        name = f"stage-{self.ink.at}"
        return Stage(
            id=name,
            title=self.ink.said(name),
            when=when,
            steps=tuple(self.steps(acts)),
            span=self.ink.span(),
        )

    def remedy(self, name: str) -> Stage:
        """Opens something and closes it again, or does what comes to mind."""
        dice, ink = self.dice, self.ink
        acts = [any_wish(dice, self.device) for _ in range(dice.number(0, 3))]
        steps = list(self.steps(acts or [any_wish(dice, self.device)]))
        if dice.often(25):  # tried again: the check stands at the end of its own remedy
            steps[-1] = replace(steps[-1], flow=(*steps[-1].flow, self.check()))
        resume = ink.said(dice.pick([*self.ids, "nowhere"])) if dice.often(75) else None
        functions = ink.words(dice.some(FUNCTIONS, 40))
        stop = None if resume else ink.said("stop")
        return Stage(
            id=name,
            title=ink.said(name),
            when=perhaps(dice, ink, self.options, 5),
            remedy=Remedy(functions, resume, None, stop, ink.span()),
            steps=tuple(steps),
            span=ink.span(),
        )

    def steps(self, acts: list[Wish]) -> list[Step]:
        found = []
        while acts:
            count = self.dice.number(1, 4)
            found.append(self.step(acts[:count]))
            acts = acts[count:]
        return found

    def step(self, acts: list[Wish]) -> Step:
        dice, ink = self.dice, self.ink
        flow: list[Item | Fork] = []
        if dice.often(12):
            flow.append(self.fork(acts))
        else:
            flow += [written(ink, wish) for wish in acts]
        if dice.often(15):
            flow.insert(dice.below(len(flow) + 1), self.check())
        repeats = self.ids and dice.often(5)
        same_as = ink.said(dice.pick([*self.ids, "nowhere"])) if repeats else None
        name = f"step-{len(self.ids)}-{ink.at}"
        self.ids.append(name)
        return Step(
            id=name,
            title=ink.said(name),
            when=perhaps(dice, ink, self.options, 10),
            optional=dice.often(9),
            same_as=same_as,
            flow=tuple(flow),
            span=ink.span(),
            body=ink.span(),
        )

    def fork(self, acts: list[Wish]) -> Fork:
        """The acts as they are, and the same acts with a mistake, or in certain configurations only."""
        dice, ink = self.dice, self.ink
        where, methods = ink.span(), []
        for number in range(dice.number(1, 3)):
            done = list(acts)
            if number and dice.often(50):
                mistaken(dice, ink, self.device, self.options, done)
            items: list[Item] = [written(ink, wish) for wish in done]
            if dice.often(8):
                items.append(self.check())
            when = condition(dice, ink, self.options) if dice.often(35) else None
            methods.append(Method(ink.said(f"way {number}"), when, tuple(items), ink.span()))
        return Fork(tuple(methods), where)

    def check(self) -> Check:
        dice, ink = self.dice, self.ink
        names = [*self.remedies, "stage-1"]
        faults = [Fault(ink.said("seen"), ink.said(dice.pick(names)))] if dice.often(20) else []
        return Check(
            expect=ink.said("right"),
            tests=ink.words(dice.some(FUNCTIONS, 45)),
            measure=None,
            powered=dice.often(45),
            if_not=ink.said(dice.pick(names)) if dice.often(35) else None,
            faults=tuple(faults),
            stop=ink.said("stop") if dice.often(10) else None,
            when=perhaps(dice, ink, self.options, 15),
            note=None,
            span=ink.span(),
        )
