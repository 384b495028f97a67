"""The steps as they were walked, in document order, those of remedies as each was first entered."""

from collections.abc import Iterable
from dataclasses import replace

from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Step
from guidebuild.proof.cells import Cells, Partition, Value
from guidebuild.proof.proof import Passage, Snapshot

Ways = dict[
    str, list[tuple[int, tuple[Passage, ...]]]
]  # remedy id -> where, and its steps as walked


def in_document_order(
    stages: Iterable[Stage], main: Iterable[Passage], remedies: Ways, start: Snapshot, cells: Cells
) -> tuple[Passage, ...]:
    """One passage a step."""
    left = iter(main)
    found: list[Passage] = []
    for stage in stages:
        if stage.remedy is None:
            found.extend(next(left) for _ in stage.steps)
        elif stage.id in remedies:
            found.extend(_first_ways(remedies[stage.id], cells))
        else:
            nowhere = replace(start, everywhere=0)
            found.extend(_never(stage, step, nowhere) for step in stage.steps)
    return tuple(found)


def _never(stage: Stage, step: Step, nowhere: Snapshot) -> Passage:
    return Passage(step, stage, 0, nowhere, nowhere, ())


def _first_ways(ways: list[tuple[int, tuple[Passage, ...]]], cells: Cells) -> list[Passage]:
    """The first way in, and of each later one the configurations that none before it had."""
    came, passages = ways[0][0], list(ways[0][1])
    for where, others in ways[1:]:
        new = where ^ (where & came)
        if new:
            came |= new
            passages = [
                _joined(one, other, new, cells) for one, other in zip(passages, others, strict=True)
            ]
    return passages


def _joined(one: Passage, other: Passage, new: int, cells: Cells) -> Passage:
    walked = (replace(walked, where=walked.where & new) for walked in other.walked)
    return replace(
        one,
        shown=one.shown | (other.shown & new),
        before=_both(one.before, other.before, new, cells),
        after=_both(one.after, other.after, new, cells),
        walked=(*one.walked, *(done for done in walked if done.where)),
    )


def _both(one: Snapshot, other: Snapshot, new: int, cells: Cells) -> Snapshot:
    values = {
        key: cells.select(_value(value), _value(other.values[key]), new)
        for key, value in one.values.items()
    }
    return Snapshot(values, one.everywhere | (other.everywhere & new))


def _value(value: object) -> Value:
    """A snapshot's value as the walk made it."""
    assert isinstance(value, int | Partition)
    return value
