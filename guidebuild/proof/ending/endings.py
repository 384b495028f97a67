"""What surely is not as it must be when the guide is done."""

from collections.abc import Iterator

from guidebuild.device.states import State
from guidebuild.device.things import Link, Part, Store, Thing
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.stage import Stage
from guidebuild.proof.ending.goal import goal_missed
from guidebuild.proof.ending.wanted import Wanted
from guidebuild.proof.ending.wrong import Wrong
from guidebuild.proof.mistake import Ending, Move
from guidebuild.proof.plain import ABSENT, IN, LEFT, OUT
from guidebuild.proof.scene import Scene


class Ends:
    """The end of one guide, asked of a scene as often as the guide is walked to its end.

    `in_reach`: for the parts that the goal is about, where they came into reach on the main way.
    """

    def __init__(self, wanted: Wanted, in_reach: dict[str, int]) -> None:
        self._wanted = wanted
        self._special = wanted.special()
        self._in_reach = in_reach

    def of(
        self,
        scene: Scene,
        where: int,
        entered_from: Check | None = None,
        after: Stage | None = None,
    ) -> list[Ending]:
        """The endings in the configurations of `where`: parts first, since what is on them follows."""
        found: list[Wrong] = []
        lost: dict[str, int] = {}
        asked = self._asked(scene)
        for part in scene.bench.device.parts if asked else ():
            for one in self._wrong(scene, part, where) if part.key in asked else ():
                found.append(one)
                lost[part.key] = lost.get(part.key, 0) | one.where
        for thing in scene.bench.others if asked else ():
            for one in self._wrong(scene, thing, where) if thing.key in asked else ():
                told = one.less(_with_its_parts(scene, thing, lost))
                if told.where:
                    found.append(told)
        found.extend(goal_missed(scene, self._in_reach, where))
        return [
            Ending(
                one.key,
                State(one.wanted),
                State(one.found),
                bits,
                one.because,
                move,
                entered_from,
                after,
            )
            for one in found
            for move, bits in last_moves(scene, one.key, one.where)
        ]

    def _asked(self, scene: Scene) -> set[str]:
        """What may end wrong: what does not end as it began, and what need not."""
        begun = self._wanted.begun
        changed = {key for key, value in scene.values.items() if value != begun.get(key)}
        return changed | self._special

    def _wrong(self, scene: Scene, thing: Thing, where: int) -> Iterator[Wrong]:
        """The states of one thing that it must not end in."""
        value, key = scene.values[thing.key], thing.key
        there = scene.both(where, scene.layout.presence.where[key])
        if isinstance(thing, Part):
            there = scene.without(there, _on_a_lost_host(scene, key))
        for wanted, asked in scene.cells.of(self._wanted.of(key)):
            for states, bits in scene.cells.of(value):
                wrong = 0 if states & wanted else bits & asked & there
                if wrong:
                    yield Wrong(key, wanted, states, wrong, self._because(thing, states))

    def _because(self, thing: Thing, found: int) -> str:
        by_goal = self._wanted.by_goal if thing.key in self._wanted.bench.goal else 0
        if isinstance(thing, Part) and thing.packing:
            return "packing"
        if thing.key in self._wanted.said:
            return "ends"
        if by_goal == OUT or (by_goal and found == ABSENT):
            return "goal"
        return "lost" if found == LEFT else "state"


def last_moves(scene: Scene, key: str, where: int) -> Iterator[tuple[Move | None, int]]:
    """The acts that took a thing last, each with its configurations; None where none did."""
    for worked, work, bits in reversed(scene.history.worked):
        here = where & bits if worked == key else 0
        if here:
            yield work.move, here
            where ^= here
        if not where:
            return
    yield None, where


def _on_a_lost_host(scene: Scene, part: str) -> int:
    """Where something that a part sits on went with the old unit: the part is no mistake of its own."""
    where = 0
    for chain in scene.layout.hosts.chains(part):
        for host in chain.parts[1:]:
            if scene.values[host] != IN:
                where |= chain.where & scene.surely(host, LEFT)
    return where


def _with_its_parts(scene: Scene, thing: Thing, lost: dict[str, int]) -> int:
    """Where a part that a link ties, or that a store is in, or one of their hosts, is not back itself."""
    if not lost:
        return 0
    parts: tuple[tuple[str, int], ...] = ()
    match thing:
        case Link():
            parts = scene.layout.ends.of(thing)
        case Store() if thing.inside is not None:
            parts = tuple(scene.layout.presence.parts([thing.inside]))
    where = 0
    for part, there in parts:
        for chain in scene.layout.hosts.chains(part):
            for host in chain.parts:
                where |= there & chain.where & lost.get(host, 0)
    return where


def left_over(
    scene: Scene,
    since: int = 0,
    entered_from: Check | None = None,
    after: Stage | None = None,
) -> list[Ending]:
    """What new units brought though it was at hand already, from the `since`-th time on."""
    return [
        Ending(key, State.ABSENT, State.OUT, bits, "left-over", work.move, entered_from, after)
        for key, work, bits in scene.history.spare[since:]
    ]
