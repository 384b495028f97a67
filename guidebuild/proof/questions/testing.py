"""What was opened and closed again, which functions that may have spoilt, and which tests came after."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

from guidebuild.device.record import Device
from guidebuild.device.states import State
from guidebuild.device.things import Link
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.stage import Stage
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof, Walked
from guidebuild.proof.questions.history import leads_to
from guidebuild.proof.questions.ways_on import remedies_of
from guidebuild.source.remembered import remembered


@dataclass(frozen=True, slots=True)
class Closed:
    """A link that carries `function` was opened, and closed again by `move`, in `where`."""

    function: str
    opened: Move
    move: Move
    where: int


@dataclass(slots=True)
class _Bench:
    """What lies open, and what was closed and not tested since, while the acts go by."""

    proof: Proof
    open: dict[str, tuple[Move, int]] = field(default_factory=dict)
    untested: dict[tuple[str, str], Closed] = field(default_factory=dict)

    def take(self, one: Walked) -> Iterator[tuple[Closed, Walked]]:
        """One act or check; each function that it tests first after a closing is told with that closing."""
        if isinstance(one.doing, Check):
            yield from self._test(one, one.doing)
            return
        link = _carrying(self.proof.device).get(one.doing.thing)
        if link is not None:
            self._work(one.doing, link, one.where)

    def _work(self, move: Move, link: Link, where: int) -> None:
        match leads_to(self.proof, move):
            case State.OUT:
                self.open[link.key] = move, where | self.open.get(link.key, (move, 0))[1]
            case State.IN if link.key in self.open:
                opened, bits = self.open[link.key]
                self.open[link.key] = opened, bits ^ (bits & where)
                if bits & where:
                    for said in link.carries:
                        closed = Closed(said.text, opened, move, bits & where)
                        self._await(link.key, closed)

    def _await(self, key: str, closed: Closed) -> None:
        before = self.untested.get((key, closed.function))
        where = closed.where | (before.where if before else 0)
        self.untested[key, closed.function] = Closed(
            closed.function, closed.opened, closed.move, where
        )

    def _test(self, one: Walked, check: Check) -> Iterator[tuple[Closed, Walked]]:
        tested = {said.text for said in check.tests}
        for slot, closed in list(self.untested.items()) if tested else ():
            here = closed.where & one.where
            if here and closed.function in tested:
                yield Closed(closed.function, closed.opened, closed.move, here), one
                rest = closed.where ^ here
                self.untested[slot] = Closed(closed.function, closed.opened, closed.move, rest)

    def left(self) -> Iterator[Closed]:
        """Closed and never tested since, the links in the order in which they were closed last."""
        yield from (closed for closed in self.untested.values() if closed.where)


def first_tests(proof: Proof) -> Iterator[tuple[Closed, Walked]]:
    """On the main way: each closing with the first check after it that tests what it may have spoilt."""
    bench = _Bench(proof)
    for one in _of_main(proof):
        yield from bench.take(one)


def untested(proof: Proof) -> Iterator[Closed]:
    """Closed again and not tested until the end, on the main way and after each remedy.

    A check counts as done wherever it may be done: in one of several methods, in a step that may be skipped.
    """
    yield from _run(proof, _of_main(proof))
    for stage in proof.guide.stages:
        if stage.remedy is not None and stage.remedy.stop is None:
            yield from _after_remedy(proof, stage)


def _after_remedy(proof: Proof, stage: Stage) -> Iterator[Closed]:
    own = [
        one for passage in proof.passages if passage.stage.id == stage.id for one in passage.walked
    ]
    bench = _Bench(proof)
    for one in own:
        list(bench.take(one))
    for one in _rest(proof, stage):
        if isinstance(one.doing, Check):
            list(bench.take(one))
    yield from bench.left()


def _rest(proof: Proof, stage: Stage) -> Iterator[Walked]:
    """The main way from the step where a remedy goes on; without one, from the first check that leads to it."""
    assert stage.remedy is not None
    resume, begun = stage.remedy.resume, False
    for one in _main(proof):
        if resume is not None:
            begun = begun or one.step.id == resume.text
        elif isinstance(one.doing, Check):
            ways = remedies_of(proof.guide, one.doing)
            begun = begun or stage.id in {way.id for way in ways}
        if begun:
            yield one


def _run(proof: Proof, walked: Iterable[Walked]) -> Iterator[Closed]:
    bench = _Bench(proof)
    for one in walked:
        list(bench.take(one))
    yield from bench.left()


@remembered
def _of_main(proof: Proof) -> tuple[Walked, ...]:
    """What matters of the main way: its checks, and the acts on what carries a function."""
    carrying = _carrying(proof.device)
    return tuple(
        one for one in _main(proof) if isinstance(one.doing, Check) or one.doing.thing in carrying
    )


def _main(proof: Proof) -> Iterator[Walked]:
    for passage in proof.passages:
        if passage.stage.remedy is None:
            yield from passage.walked


@remembered
def _carrying(device: Device) -> dict[str, Link]:
    links = (thing for thing in device.things.values() if isinstance(thing, Link))
    return {link.key: link for link in links if link.carries}
