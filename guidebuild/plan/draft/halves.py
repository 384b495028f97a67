"""Both halves of a guide as stages: taking apart, and putting back with its tests."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace

from guidebuild.device.acts import Verb
from guidebuild.device.record import POWER
from guidebuild.device.things import Connector, Part, Store
from guidebuild.plan.bench import Bench
from guidebuild.plan.draft.closing import Closing
from guidebuild.plan.draft.desk import Desk
from guidebuild.plan.draft.names import name
from guidebuild.plan.draft.script import Block, Stage, Step
from guidebuild.plan.draft.steps import closing_groups, opening_groups
from guidebuild.plan.draft.tester import Tester
from guidebuild.plan.draft.trials import Trials, closed_before, is_outside
from guidebuild.plan.draft.work import Work
from guidebuild.plan.draft.writing import Writer
from guidebuild.plan.graph import numbers


class FirstHalf:
    """The openings in order, in stages: safe, open, take out."""

    def __init__(
        self, desk: Desk, bench: Bench, works: Sequence[Work], parts: Sequence[str]
    ) -> None:
        self.desk = desk
        self.bench = bench
        self.works = list(works)
        self.parts = set(parts)
        self.safe = self._until(self._makes_safe)
        self.open = max(self.safe, self._until(self._opens))
        while self.open < len(works) and isinstance(self._thing(self.works[self.open]), Store):
            self.open += 1

    def stages(self, title: str, shared: Stage | None = None) -> Iterator[Stage]:
        """Up to three; the first is a shared one where the model has it."""
        noun = self.desk.noun
        if shared is not None:
            yield shared
        else:
            yield from self._stage(f"Make the {noun} safe", self.works[: self.safe])
        yield from self._stage(f"Open the {noun}", self.works[self.safe : self.open])
        yield from self._stage(title, self.works[self.open :])

    def _stage(self, title: str, works: Sequence[Work]) -> Iterator[Stage]:
        if works:
            yield Stage(title, tuple(steps(self.desk, opening_groups(self.bench.layout, works))))

    def _until(self, counts: Callable[[Work], bool]) -> int:
        return max((n + 1 for n, work in enumerate(self.works) if counts(work)), default=0)

    def _thing(self, work: Work) -> object:
        return self.desk.device.things[work.keys[0]]

    def _makes_safe(self, work: Work) -> bool:
        thing = self._thing(work)
        return work.keys[0] == POWER or (isinstance(thing, Connector) and thing.source)

    def _opens(self, work: Work) -> bool:
        """An outer cover comes off: a part that hides others and is hidden by none."""
        key = work.keys[0]
        covers = self.bench.layout.covers
        if not isinstance(self._thing(work), Part) or key in self.parts or covers.behind(key):
            return False
        return any(key in covers.behind(one) for one in self.desk.device.things if one != key)


def steps(desk: Desk, groups: Sequence[list[Work]]) -> Iterator[Step]:
    """A stage's steps; after a charge was let out it is measured."""
    writer = Writer(desk)
    for group in groups:
        yield writer.step(group)
        thing = desk.device.things[group[-1].keys[0]]
        if isinstance(thing, Store) and thing.store == "charge" and group[-1].verb is Verb.RELEASE:
            inside = thing.inside.text if thing.inside is not None else thing.id
            where = name(desk.device, desk.device.names.get(inside, (thing.key,))[0])
            check = Block("check", ({
                "expect": f"A voltmeter shows that the {where} is empty.",
                "stop": "Keep your hands out, and ask the help line.",
            },))  # fmt: skip
            yield replace(writer.step([], f"Measure the {where}", [check]), keys=frozenset())


class SecondHalf:
    """Putting back: what is needed for the test, the test, the rest, and the closed device."""

    def __init__(
        self, desk: Desk, bench: Bench, closings: Sequence[Closing], found: Trials,
        opened: Sequence[Work], settings: Sequence[Work], gone: frozenset[str] = frozenset(),
    ) -> None:  # fmt: skip
        self.desk = desk
        self.bench = bench
        self.closings = list(closings)
        self.found = found
        self.gone = gone
        sources = [w.keys[0] for w in opened if self._is_source(w)]
        self.inner = [key for key in sources if not is_outside(bench, key)]
        self.outer = [key for key in sources if is_outside(bench, key)]
        every = [one.key for one in bench.layout.sources]
        self.tester = Tester(desk, bench, self.inner or self.outer or every)
        self.begin: tuple[Step, ...] = ()  # what stands at the head of fitting the part
        self.settings = list(settings)

    def stages(
        self,
        fit: str,
        fitted: Sequence[int],
        shared: Sequence[Stage] = (),
        skip: frozenset[int] = frozenset(),
    ) -> Iterator[Stage]:
        """`fitted`: tasks that belong to fitting the part. `shared` ends the closing, in place of the tasks `skip`."""
        noun = self.desk.noun
        first = self.found.first
        if not self.found.open_:
            first = closed_before(self.closings, frozenset(fitted))
        left = [one for one in self.closings if one.task not in skip]
        now = [one for one in left if one.task in first]
        yield from self._stage(fit, [*self.begin, *self._fitted(now)])
        shut = {one.task for one in now}
        yield from self._open_test(shut)
        rest = [one for one in left if one.task not in first]
        yield from self._stage(f"Close the {noun}", self._with_tests(rest, shut))
        yield from shared
        yield from self._stage(f"Try the {noun}", self._last())
        yield from self.tester.remedies

    def _stage(self, title: str, found: Sequence[Step]) -> Iterator[Stage]:
        if found:
            yield Stage(title, tuple(found))

    def _closed(self, closings: Sequence[Closing], writer: Writer | None = None) -> list[Step]:
        writer = writer or Writer(self.desk)
        groups: list[list[Work]] = []
        works: list[Work] = []
        for one in closings:
            if one.reopen:
                groups += closing_groups(self.bench.layout, works)
                groups += opening_groups(self.bench.layout, one.reopen)
                works = []
            works += one.works
        groups += closing_groups(self.bench.layout, works)
        return [writer.step(group) for group in groups]

    def _fitted(self, closings: Sequence[Closing]) -> list[Step]:
        """What is set while the device lies open is set before the first cover goes over it."""
        if not self._set_while_open():
            return self._closed(closings)
        last = {one.task: n for n, one in enumerate(self.closings)}
        over = [
            max(
                (one for one in numbers(need.tasks) if one in last),
                key=last.__getitem__,
                default=-1,
            )
            for work in self.settings
            for key in work.keys
            for need in self.bench.at_hand(key)
            if need.why == "hidden"
        ]
        at = next((n for n, one in enumerate(closings) if one.task in over), len(closings))
        writer = Writer(self.desk)
        before = [*self._closed(closings[:at], writer), *self._set(writer)]
        return [*before, *self._closed(closings[at:], writer)]

    def _open_test(self, shut: set[int]) -> Iterator[Stage]:
        tried, source = self.found.open_, self.found.source
        if not tried:
            return
        writer = Writer(self.desk)
        if source is None:
            found = self.tester.pulled_at(writer, tried, shut)
        else:
            found = self.tester.live(writer, tried, source, shut)
            if self.settings:
                found[-1:-1] = self._set(writer)
        yield Stage(f"Test the open {self.desk.noun}", tuple(found))

    def _with_tests(self, closings: Sequence[Closing], shut: set[int]) -> list[Step]:
        """What a source carries is tried as soon as it is mated for good."""
        writer = Writer(self.desk)
        found: list[Step] = []
        waiting: list[Closing] = []
        done = set(shut)
        for one in closings:
            waiting.append(one)
            done.add(one.task)
            keys = {key for work in one.works for key in work.keys}
            fed = [trial for trial in self.found.fed if keys & set(trial.links) & set(self.inner)]
            if fed:
                source = next(key for key in fed[0].links if key in keys)
                found += self._closed(waiting, writer)
                found += self.tester.fed(writer, fed, source, done)
                waiting = []
        return found + self._closed(waiting, writer)

    def _last(self) -> list[Step]:
        writer = Writer(self.desk)
        every = list(dict.fromkeys((*self.found.open_, *self.found.fed)))
        mains = [] if self._fed_inside() else [key for key in self.outer if self._may_mate(key)]
        tried = [one for one in every if mains or not self.tester.lent([one])]
        late = [] if self._is_set_by_now() else self._set(writer)
        powered = bool(mains) or self._fed_inside()
        return self.tester.closed(writer, tried, mains, late, powered)

    def _set(self, writer: Writer) -> list[Step]:
        return [writer.step([work]) for work in self.settings]

    def _is_set_by_now(self) -> bool:
        """Set in the test of the open device, or while it lay open."""
        tried_live = bool(self.found.open_) and self.found.source is not None
        return tried_live or self._set_while_open()

    def _set_while_open(self) -> bool:
        """Nothing is tried switched on while open, and later a cover would be in the way."""
        tried_live = bool(self.found.open_) and self.found.source is not None
        keys = [key for work in self.settings for key in work.keys]
        hidden = any(need.why == "hidden" for key in keys for need in self.bench.at_hand(key))
        return hidden and not tried_live

    def _fed_inside(self) -> bool:
        """Whether a source inside is mated again, or was never opened."""
        sources = [one.key for one in self.bench.layout.sources]
        return any(not is_outside(self.bench, key) and self._may_mate(key) for key in sources)

    def _may_mate(self, key: str) -> bool:
        """Nothing that it ties or guards stays off; and no charging lead, which feeds but has nothing to charge."""
        thing = self.desk.device.things[key]
        if isinstance(thing, Connector) and thing.carries and is_outside(self.bench, key):
            return False
        named = {one for one, _ in self.bench.layout.guarding.named(key)}
        return key not in self.gone and not named & self.gone

    def _is_source(self, work: Work) -> bool:
        thing = self.desk.device.things[work.keys[0]]
        return isinstance(thing, Connector) and thing.source
