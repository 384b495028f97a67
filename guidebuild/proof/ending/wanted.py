"""How each thing must be at the end: as at the start, but for `ends:`, the goal, and what follows from them."""

from guidebuild.device.states import Kind
from guidebuild.device.things import Link, Part, Store, Thing
from guidebuild.proof.bench import Bench
from guidebuild.proof.cells import Value
from guidebuild.proof.plain import ABSENT, ANY, IN, LEFT, OUT, WORN
from guidebuild.proof.scene import Scene
from guidebuild.proof.start import said_starts

NOT_FITTED = OUT | WORN | LEFT | ABSENT
_WANTED_BY_GOAL = {"replace": IN, "add": IN, "remove": OUT}


class Wanted:
    """Worked out once a proof, from the start."""

    def __init__(self, bench: Bench, start: Scene) -> None:
        self.bench = bench
        self.said = _said(bench)
        self.by_goal = _WANTED_BY_GOAL.get(bench.guide.goal.verb, 0)
        self.begun = start.keep()
        self._starts = said_starts(bench)
        self._known: dict[str, Value] = {}
        self._off = self._elsewhere()

    def of(self, key: str) -> Value:
        """The states in which a thing may end, where it is there at all."""
        known = self._known.get(key)
        if known is None:
            known = self._known[key] = self._find(self.bench.device.things[key])
        return known

    def special(self) -> set[str]:
        """What need not end as it began: more than a glance at the start decides."""
        keys = {*self.said, *(self.bench.goal if self.by_goal else ())}
        if self.bench.guide.goal.verb == "add":
            for part in self.bench.goal:
                keys.update(link.key for link in self.bench.layout.ties.get(part, ()))
        for part in self._begun_off():
            keys.update(link.key for link in self.bench.layout.touching(part))
        return keys

    def _find(self, thing: Thing) -> Value:
        if thing.key in self.said:
            return self.said[thing.key]
        if self.by_goal and thing.key in self.bench.goal:
            return self.by_goal
        match thing:
            case Part(host=None):
                return ANY
            case Part():
                return self._as_at_the_start(thing.key)
            case Link():
                return self._link(thing)
            case Store() if thing.kind is Kind.POWER or thing.filled_by:
                return ANY
            case _:
                return self.begun[thing.key]

    def _as_at_the_start(self, key: str) -> Value:
        """What began absent need not be brought."""
        began, cells = self.begun[key], self.bench.cells
        if began == IN:
            return began
        return cells.change(began, cells.surely(began, ABSENT), lambda states: NOT_FITTED)

    def _link(self, link: Link) -> Value:
        """In, unless it began otherwise; where one of its parts must or may be off it is free; of an added part, in."""
        ends, cells = self.bench.layout.ends.of(link), self.bench.cells
        value: Value = self.begun[link.key] if link.key in self._starts else IN
        for end, there in ends if self._off else ():
            for chain in self.bench.layout.hosts.chains(end):
                for part in chain.parts:
                    free = self._off.get(part, 0) & chain.where & there
                    value = cells.put(value, free, ANY)
        if self.bench.guide.goal.verb == "add":
            for end, there in ends:
                if end in self.bench.goal:
                    value = cells.put(value, there, IN)
        return value

    def _elsewhere(self) -> dict[str, int]:
        """Parts that must not, or need not, end fitted, and where."""
        found, cells = {}, self.bench.cells
        for part in self.bench.device.parts:
            if part.host is not None or part.key in self.said:
                wanted = self.of(part.key)
                if wanted != IN:
                    there = self.bench.layout.presence.where[part.key]
                    where = there ^ (there & cells.surely(wanted, IN))
                    if where:
                        found[part.key] = where
        return found

    def _begun_off(self) -> list[str]:
        """Parts that begin other than fitted, somewhere where they are there."""
        there, cells = self.bench.layout.presence.where, self.bench.cells
        return [
            part.key
            for part in self.bench.device.parts
            if there[part.key] & (cells.everywhere ^ cells.surely(self.begun[part.key], IN))
        ]


def _said(bench: Bench) -> dict[str, int]:
    """`ends:` of the guide, by key."""
    names = bench.device.names
    return {
        key: int(state) for name, state in bench.guide.ends.items() for key in names.get(name, ())
    }
