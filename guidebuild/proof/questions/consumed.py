"""How many of each single-use thing and material the worst path through a guide takes.

The worst path goes through every check that fails as often as its remedy may be tried: each time the remedy is
done, and what lies between its `resume` step and the check is done again.
"""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.device.things import Hole
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Entry, Passage, Proof
from guidebuild.proof.questions.tools import uses
from guidebuild.source.span import Span

_NEW = frozenset({Verb.RENEW, Verb.EXCHANGE, Verb.ADD})


@dataclass(frozen=True, slots=True)
class Consumed:
    """`count` of `item` (an id of the record or of tools.yaml); `tries`: of these on second tries."""

    item: str
    count: int
    tries: int
    first: Span  # where it is first taken


def consumed(proof: Proof) -> tuple[Consumed, ...]:
    """Everything that is used up, in the order of first use."""
    firsts: dict[str, Span] = {}
    for passage in proof.passages:
        for item, _, span in _taken(proof, passage):
            firsts.setdefault(item, span)
    main = [passage for passage in proof.passages if passage.stage.remedy is None]
    once = _most(proof, main)
    again: Counter[str] = Counter()
    for entry in proof.entries:
        again.update(_of_entry(proof, entry, main))
    return tuple(
        Consumed(item, once[item] + again[item], again[item], firsts[item]) for item in firsts
    )


def _of_entry(proof: Proof, entry: Entry, main: Sequence[Passage]) -> Counter[str]:
    """What one check takes when its remedy is tried as often as it may be."""
    remedy = entry.remedy.remedy
    assert remedy is not None
    own = [passage for passage in proof.passages if passage.stage is entry.remedy]
    ids = [passage.step.id for passage in main]
    resume = remedy.resume.text if remedy.resume else None
    redone: Sequence[Passage] = ()
    if resume in ids and entry.step.id in ids:
        redone = main[ids.index(resume) : ids.index(entry.step.id) + 1]
    tries = remedy.tries or 1
    return Counter({item: tries * count for item, count in _most(proof, [*own, *redone]).items()})


def _most(proof: Proof, passages: Sequence[Passage]) -> Counter[str]:
    """The largest number of each item in any one configuration."""
    by_item: dict[str, dict[int, int]] = {}
    for passage in passages:
        for item, where_count in _by_item(proof, passage).items():
            cells = by_item.setdefault(item, {0: proof.configurations.everywhere})
            for where, count in where_count:
                by_item[item] = cells = _added(cells, where, count)
    return Counter({item: max(cells) for item, cells in by_item.items()})


def _by_item(proof: Proof, passage: Passage) -> dict[str, list[tuple[int, int]]]:
    found: dict[str, list[tuple[int, int]]] = {}
    for item, where_count, _ in _taken(proof, passage):
        found.setdefault(item, []).append(where_count)
    return found


def _added(cells: dict[int, int], where: int, count: int) -> dict[int, int]:
    """Counts by configuration, with `count` more in `where`."""
    new: dict[int, int] = {}
    for before, bits in cells.items():
        inside = bits & where
        for value, some in ((before + count, inside), (before, bits ^ inside)):
            if some:
                new[value] = new.get(value, 0) | some
    return new


def _taken(proof: Proof, passage: Passage) -> Iterator[tuple[str, tuple[int, int], Span]]:
    """Item, (configurations, number), place. Of several methods each counts: the record can't choose."""
    for walked in passage.walked:
        move = walked.doing
        if isinstance(move, Move) and move.verb in _NEW:
            thing = proof.device.things[move.thing]
            item = thing.group if isinstance(thing, Hole) else thing.id
            yield item, (walked.where, 1), move.span
    for use in uses(passage.step):
        if use.what == "material":
            where = passage.shown & proof.configurations.bits(use.when)
            number = int(use.amount.value) if use.amount and not use.amount.unit else 1
            for said in use.items:
                yield said.text, (where, number), said.span
