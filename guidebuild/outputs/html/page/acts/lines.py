"""Everything that an act of the author's comes to, as lines in the order in which it is done."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import groupby

from guidebuild.device.states import Kind
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.fastener import FastenerAct
from guidebuild.guide.blocks.part import PartAct
from guidebuild.outputs.html.page.acts import connector, fastener, joint, part, power, store
from guidebuild.outputs.html.page.acts.line import Line
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Walked
from guidebuild.translate.messages.text import Text, text

_SAYERS = {
    Kind.CONNECTOR: connector.lines,
    Kind.PART: part.lines,
    Kind.JOINT: joint.lines,
    Kind.POWER: power.lines,
    Kind.STORE: store.lines,
}


def lines_of(reading: Reading, act: Act, walked: Sequence[Walked], among: int) -> list[Line]:
    """The lines of one act; `among` is where its step is shown."""
    shown = [one for one in walked if not _by_itself(reading, act, one)]
    found = [line for run in _runs(reading, shown) for line in _said(reading, act, run)]
    found = _with_companions(reading, act, found, walked)
    found = [replace(line, when=reading.when(line.where, among)) for line in found]
    return _with_words(reading, act, found)


def _runs(reading: Reading, walked: Sequence[Walked]) -> Iterator[list[Walked]]:
    """Neighbours of one kind."""
    for _, run in groupby(walked, key=lambda one: _kind(reading, one)):
        yield list(run)


def _kind(reading: Reading, one: Walked) -> Kind:
    assert isinstance(one.doing, Move)
    return reading.device.things[one.doing.thing].kind


def _said(reading: Reading, act: Act, run: Sequence[Walked]) -> Iterator[Line]:
    kind = _kind(reading, run[0])
    if kind is Kind.FASTENER:
        yield from fastener.lines(reading, act if isinstance(act, FastenerAct) else None, run)
    else:
        yield from _SAYERS[kind](reading, act if act.kind is kind else None, run)


def _by_itself(reading: Reading, act: Act, one: Walked) -> bool:
    """Whether a joint opens or closes with its part, without a word of the author's."""
    move = one.doing
    if not isinstance(act, PartAct) or not isinstance(move, Move):
        return False
    thing = reading.device.things[move.thing]
    written = {said.text for said in (*act.undo, *act.do_up)}
    return thing.kind is Kind.JOINT and thing.id not in written


def _with_companions(
    reading: Reading, act: Act, lines: list[Line], walked: Sequence[Walked]
) -> list[Line]:
    """Says with the part what opens or closes by itself: `the cover clips close`."""
    keys = [one.doing.thing for one in walked if isinstance(one.doing, Move)]
    own = [
        one.doing.thing
        for one in walked
        if isinstance(one.doing, Move) and _by_itself(reading, act, one)
    ]
    target = next((n for n, line in enumerate(lines) if _is_target(act, line)), None)
    if not own or target is None:
        return lines
    names: list[Text] = [
        text(reading.inside(reading.name(key))) for key in dict.fromkeys(own) if key in keys
    ]
    way = "opens" if act.verb.value in ("remove", "lift") else "closes"
    said = reading.say(f"act.with-it-{way}", count=len(names), names=reading.say.listed(names))
    line = lines[target]
    lines[target] = replace(line, details=(*line.details, said))
    return lines


def _is_target(act: Act, line: Line) -> bool:
    ids = {key.partition("@")[0] for key in line.things}
    return bool(ids & {said.text for said in act.targets})


def _with_words(reading: Reading, act: Act, lines: list[Line]) -> list[Line]:
    """The author's note and what to do if it is stuck, at the line that they are about."""
    if not lines or (act.note is None and act.if_stuck is None):
        return lines
    at = next((n for n, line in enumerate(lines) if _is_target(act, line)), len(lines) - 1)
    line = lines[at]
    note = (text(act.note.text),) if act.note is not None else ()
    stuck = reading.say("act.if-stuck", text=act.if_stuck.text) if act.if_stuck else ()
    lines[at] = replace(line, notes=(*line.notes, *note), stuck=stuck)
    return lines
