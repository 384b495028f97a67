"""What a guide that only takes apart has done by its end: what lies open, in which order, and what was shut again."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace

from guidebuild.device.acts import OPENING, Verb
from guidebuild.device.states import State
from guidebuild.plan.bench import Bench
from guidebuild.plan.draft.closing import HARD, Back, Closing
from guidebuild.plan.draft.work import Work
from guidebuild.plan.graph import numbers
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof

_OPENS = OPENING | {Verb.LOOSEN, Verb.LIFT, Verb.SWITCH_OFF}
_OPEN = State.HALF | State.OUT | State.WORN


@dataclass(slots=True)
class History:
    """`opened`: still open at the end, in the order of opening. `shut`: opened and shut again, in that order."""

    opened: list[Work] = field(default_factory=list)
    shut: list[Work] = field(default_factory=list)
    renewed: set[str] = field(default_factory=set)
    exchanged: set[str] = field(default_factory=set)


def history(proof: Proof, bench: Bench) -> History:
    """Told by the walk along the main way, and by how everything stands at its end."""
    found = History()
    last: dict[tuple[Verb, str], Work] = {}
    for move, where in _moves(proof):
        if move.verb is Verb.RENEW:
            found.renewed.add(move.thing)
        elif move.verb in (Verb.EXCHANGE, Verb.ADD):
            found.exchanged.add(move.thing)
        elif move.verb in _OPENS:
            task = _task(bench, move.verb, move.thing)
            if task is not None:
                before = last.pop((move.verb, move.thing), None)
                bits = where | (before.where if before else 0)
                last[move.verb, move.thing] = Work(move.verb, (move.thing,), bits, task)
    for work in last.values():
        key = work.keys[0]
        open_ = proof.end.surely(key, _open_by(work)) & work.where
        if open_:
            found.opened.append(replace(work, where=open_))
        else:
            found.shut.append(work)
    found.opened = list(_joined(found.opened))
    return found


def _open_by(work: Work) -> State:
    """A part that was taken off after it was lifted is lifted no more, but must be lowered all the same."""
    return State.OUT | State.WORN if work.verb is Verb.REMOVE else _OPEN


def _moves(proof: Proof) -> Iterator[tuple[Move, int]]:
    for passage in proof.passages:
        if passage.stage.remedy is None:
            for one in passage.walked:
                if isinstance(one.doing, Move):
                    yield one.doing, one.where


def _task(bench: Bench, verb: Verb, key: str) -> int | None:
    for number, one in enumerate(bench.openings):
        if key in one.keys and (one.verb is verb or {one.verb, verb} <= {Verb.LOOSEN, Verb.REMOVE}):
            return number
    return None


def _joined(works: Sequence[Work]) -> Iterator[Work]:
    """Screws of one opening that came out one after the other are one work again."""
    waiting: Work | None = None
    for work in works:
        same = waiting is not None and (waiting.task, waiting.where, waiting.verb) == (
            work.task,
            work.where,
            work.verb,
        )
        if waiting is not None and same:
            waiting = replace(waiting, keys=(*waiting.keys, *work.keys))
            continue
        if waiting is not None:
            yield waiting
        waiting = work
    if waiting is not None:
        yield waiting


def reopening(bench: Bench, told: History, closings: Sequence[Closing]) -> list[Closing]:
    """The closings, and round each that needs it the opening and shutting of what stands shut by then."""
    open_ = {work.task for work in told.opened}
    found = []
    for closing in closings:
        again = _in_the_way(bench, told, closing.task, open_)
        if not again or not closing.works:
            found.append(closing)
            continue
        back = Back(bench, bench.needs, again).closings()
        works = [work for one in back for work in one.works]
        found.append(replace(closing, works=(*closing.works, *works), reopen=tuple(again)))
    return found


def _in_the_way(bench: Bench, told: History, task: int, open_: set[int | None]) -> list[Work]:
    """What was open for it when it was opened, is shut now, and was needed; with what that needs itself."""
    shut = {work.task: work for work in told.shut}
    wanted: set[int] = set()
    waiting = [task]
    while waiting:
        one = waiting.pop()
        for need in bench.needs[one]:
            tasks = set(numbers(need.tasks))
            if need.why in HARD and not tasks & (open_ | wanted):
                again = next((each for each in tasks if each in shut), None)
                if again is not None:
                    wanted.add(again)
                    waiting.append(again)
    return [work for work in told.shut if work.task in wanted]
