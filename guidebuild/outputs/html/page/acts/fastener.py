"""Screws: those alike that are worked one after the other are one line."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import groupby

from guidebuild.device.acts import Verb
from guidebuild.device.things import Hole, Torque
from guidebuild.guide.blocks.fastener import FastenerAct
from guidebuild.outputs.html.page.acts.line import Line, Pocket, ToolUse
from guidebuild.outputs.html.page.labels import Numbered
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.screw_words import drive_words, head_words, size_words
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Walked
from guidebuild.proof.questions.cases import values
from guidebuild.translate.messages.text import Text

_TO_TRAY = frozenset({Verb.REMOVE})
_FROM_TRAY = frozenset({Verb.REFIT, Verb.START})
_TIGHT = frozenset({Verb.TIGHTEN, Verb.REFIT})


@dataclass(frozen=True, slots=True)
class _Turn:
    """One screw that is turned, in the configurations in which it is this one and goes to this torque."""

    hole: Hole
    verb: Verb
    screw: Numbered | None
    torque: Torque | None
    where: int


def lines(reading: Reading, act: FastenerAct | None, walked: Sequence[Walked]) -> Iterator[Line]:
    """The lines of neighbouring moves of screws; `act` where the author wrote a fastener block."""
    turns = [turn for one in walked for turn in _turns(reading, act, one)]
    orders = _orders(reading, act, turns)
    for _, alike in groupby(_regrouped(_spread(reading, act, turns)), key=_kind):
        yield _line(reading, act, list(alike), orders)


def _spread(reading: Reading, act: FastenerAct | None, turns: list[_Turn]) -> list[_Turn]:
    """Screws of several kinds that go in by a sequence are first all started, then tightened in its order."""
    kinds = {turn.screw.number for turn in turns if turn.screw}
    if len(kinds) < 2 or any(turn.verb is not Verb.REFIT for turn in turns):
        return turns
    if not _sequence(reading, act, turns[0]):
        return turns
    started = [replace(turn, verb=Verb.START, torque=None) for turn in turns]
    return started + [replace(turn, verb=Verb.TIGHTEN) for turn in turns]


def _turns(reading: Reading, act: FastenerAct | None, one: Walked) -> Iterator[_Turn]:
    move = one.doing
    assert isinstance(move, Move)
    hole = reading.device.things[move.thing]
    assert isinstance(hole, Hole)
    for screw, where in reading.labels.of_hole.get(hole.key, ((None, one.where),)):
        here = where & one.where
        if not here:
            continue
        if move.verb not in _TIGHT or (act is not None and act.torque is not None):
            told = act.torque if act is not None and move.verb in _TIGHT else None
            yield _Turn(hole, move.verb, screw, told, here)
            continue
        rest = here
        for torque, there in values(reading.proof, hole.torque, here):
            yield _Turn(hole, move.verb, screw, torque, there)
            rest ^= there
        if rest:
            yield _Turn(hole, move.verb, screw, None, rest)


def _kind(turn: _Turn) -> tuple[object, ...]:
    number = turn.screw.number if turn.screw else turn.hole.group
    if turn.verb is Verb.TIGHTEN:
        number = ""  # one order of tightening may hold several lengths
    return turn.verb.value, number, turn.where, turn.torque, turn.hole.captive


def _regrouped(turns: Sequence[_Turn]) -> list[_Turn]:
    """Screws of a kind together, each kind where its first one stands: a sequence may mix lengths."""
    place: dict[tuple[object, ...], int] = {}
    for n, turn in enumerate(turns):
        place.setdefault(_kind(turn), n)
    return sorted(turns, key=lambda turn: place[_kind(turn)])


def _line(
    reading: Reading,
    act: FastenerAct | None,
    turns: list[_Turn],
    orders: tuple[tuple[str, int], ...],
) -> Line:
    first, say = turns[0], reading.say
    captive = first.hole.captive
    screw = first.screw.screw if first.screw else None
    size = size_words(say, screw) if screw else ()
    torque = _torque(reading, first.torque)
    key = f"act.fastener.{first.verb.value}"
    key += "-captive" if captive and say.has(f"{key}-captive") else ""
    key += "-torque" if torque and say.has(f"{key}-torque") else ""
    return Line(
        do=say(key, count=len(turns), size=size, torque=torque),
        things=tuple(turn.hole.key for turn in turns),
        where=first.where,
        references=tuple(dict.fromkeys(turn.screw.number for turn in turns if turn.screw)),
        details=tuple(_details(reading, act, turns)),
        screw=None if first.verb is Verb.TIGHTEN else screw,
        count=len(turns),
        tools=_tools(reading, act, first),
        pocket=None if captive else _pocket(first.verb),
        orders=orders if first.verb in _TIGHT else (),
    )


def _pocket(verb: Verb) -> Pocket | None:
    return Pocket.TO if verb in _TO_TRAY else Pocket.FROM if verb in _FROM_TRAY else None


def _torque(reading: Reading, torque: Torque | None) -> Text:
    return reading.say.said(torque.figure) if torque is not None and torque.figure else ()


def _tools(reading: Reading, act: FastenerAct | None, turn: _Turn) -> tuple[ToolUse, ...]:
    if turn.verb is Verb.START or turn.verb is Verb.RENEW:
        return ()
    said = (act.with_ if act is not None else ()) or turn.hole.with_
    if said:
        return (ToolUse(tuple(one.text for one in said)),)
    drive = turn.screw.screw.drive if turn.screw else None
    return (ToolUse(_fitting(reading, drive), drive),) if drive else ()


def _fitting(reading: Reading, drive: str) -> tuple[str, ...]:
    """The first tool of the list that fits a drive."""
    fits = (id for id, one in reading.tools.items() if drive in {said.text for said in one.fits})
    found = next(fits, None)
    return (found,) if found else ()


def _details(reading: Reading, act: FastenerAct | None, turns: list[_Turn]) -> Iterator[Text]:
    first, say = turns[0], reading.say
    if first.verb is Verb.START:
        yield say("act.by-hand")
    if first.torque is not None and first.torque.word == "by-hand" and first.verb in _TIGHT:
        yield say("act.hand-tight")
    if first.screw and first.verb in (_TO_TRAY | _FROM_TRAY | {Verb.LOOSEN, Verb.RENEW}):
        yield head_words(say, first.screw.screw)
    if first.screw and first.screw.screw.drive and first.verb is not Verb.START:
        yield drive_words(say, first.screw.screw.drive)
    if act is not None and act.screw_from is not None:
        yield say("act.from-hole", hole=say.hole(act.screw_from.text))
    elif not first.hole.captive and first.screw and _pocket(first.verb):
        way = "to" if first.verb in _TO_TRAY else "from"
        yield say(f"act.{way}-pocket", number=first.screw.number)
    if first.verb in _TIGHT and len(turns) > 2 and (sequence := _sequence(reading, act, first)):
        yield say(f"act.sequence.{sequence}")


def _sequence(reading: Reading, act: FastenerAct | None, turn: _Turn) -> str | None:
    if act is not None and act.sequence is not None:
        return act.sequence.text
    group = reading.device.groups.get(turn.hole.group)
    return group.sequence if group is not None else None


def _orders(
    reading: Reading, act: FastenerAct | None, turns: list[_Turn]
) -> tuple[tuple[str, int], ...]:
    """The squares on the drawing: the order in which the record lists the holes."""
    tight = list(dict.fromkeys(turn.hole.key for turn in turns if turn.verb in _TIGHT))
    if not tight or _sequence(reading, act, turns[0]) != "listed":
        return ()
    return tuple((key, n) for n, key in enumerate(tight, 1))
