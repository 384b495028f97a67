"""Remedies: entered from checks, each way in once a configuration, walked in the state of the check."""

from collections import deque
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

from guidebuild.guide.guide import Guide
from guidebuild.guide.stage import Stage
from guidebuild.proof.bench import Bench
from guidebuild.proof.cells import Cells, Value
from guidebuild.proof.proof import Entry, Passage
from guidebuild.proof.questions.ways_on import remedies_of
from guidebuild.proof.scene import Scene
from guidebuild.proof.walk.record import Moment, Record
from guidebuild.proof.walk.stepping import Stepping


@dataclass(frozen=True, slots=True)
class Way:
    """A way into a remedy: from which check, in which configurations; `opened` with which values."""

    moment: Moment
    remedy: Stage
    where: int


@dataclass(frozen=True, slots=True)
class Mended:
    """A remedy walked to its end: the way in, the scene that it ends with, what was found in it."""

    way: Way
    scene: Scene
    record: Record


@dataclass(slots=True)
class Remedies:
    """Walks every way into every remedy, first come first served."""

    guide: Guide
    stepping: Stepping
    entries: list[Entry] = field(default_factory=list)
    passages: dict[str, list[tuple[int, tuple[Passage, ...]]]] = field(default_factory=dict)
    _came: dict[tuple[int, str, str], int] = field(default_factory=dict)

    def walk(self, bench: Bench, moments: Iterable[Moment]) -> Iterator[Mended]:
        """From the checks of the main way, and from the checks inside remedies that these lead to."""
        waiting = deque(self._ways(moments, bench.cells))
        while waiting:
            way = waiting.popleft()
            mended = self._mend(bench, way)
            waiting.extend(self._ways(mended.record.moments, bench.cells, way))
            yield mended

    def _ways(
        self, moments: Iterable[Moment], cells: Cells, open_: Way | None = None
    ) -> Iterator[Way]:
        """The ways on from these checks that nobody came before."""
        for moment in moments:
            for remedy in remedies_of(self.guide, moment.check):
                where = moment.where
                if open_ is not None and remedy is open_.remedy:
                    where = beyond(cells, moment.values, open_.moment.values, where)
                slot = (id(moment.check), moment.step.id, remedy.id)
                came = self._came.get(slot, 0)
                self.entries.append(Entry(moment.check, moment.step, remedy, moment.where))
                where ^= where & came
                if where:
                    self._came[slot] = came | where
                    yield Way(moment, remedy, where)

    def _mend(self, bench: Bench, way: Way) -> Mended:
        record = Record(entered_from=way.moment.check)
        inside = Scene(bench, way.moment.values, way.moment.history())
        for step in way.remedy.steps:
            self.stepping.walk(inside, way.remedy, step, way.where, record)
        walked = self.passages.setdefault(way.remedy.id, [])
        walked.append((way.where, tuple(record.passages)))
        return Mended(way, inside, record)


def beyond(cells: Cells, values: dict[str, Value], others: dict[str, Value], where: int) -> int:
    """The configurations of `where` in which something may be true that could not be in the other values."""
    within = where
    for key, value in values.items():
        other = others[key]
        if value is not other:
            within &= cells.within(value, other)
            if not within:
                return where
    return where ^ within
