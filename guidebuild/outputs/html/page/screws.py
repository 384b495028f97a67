"""The screw list: every screw of the guide with its holes, driver, torque, and the steps in which it moves."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

from guidebuild.device.acts import Verb
from guidebuild.device.screw import Screw
from guidebuild.device.things import Hole, Torque
from guidebuild.draw.screw import screw_box, screw_svg
from guidebuild.draw.svg import Box
from guidebuild.outputs.html.page.labels import Numbered
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.screw_words import drive_words, whole_words
from guidebuild.outputs.html.page.when import When
from guidebuild.proof.mistake import Move
from guidebuild.proof.questions.cases import values
from guidebuild.translate.messages.text import Mark, Text, text

_OUT = frozenset({Verb.REMOVE, Verb.LOOSEN})
_IN = frozenset({Verb.START, Verb.REFIT, Verb.TIGHTEN})


@dataclass(frozen=True, slots=True)
class ScrewRow:
    """`first`: whether it is its number's first row, which shows the screw. `out`, `back`: (step id, number)."""

    number: str
    first: bool
    svg: str
    designation: Text
    driver: Text
    group: str
    holes: tuple[str, ...]
    torque: Text
    out: tuple[tuple[str, str], ...]
    back: tuple[tuple[str, str], ...]
    captive: bool
    when: When | None
    keys: tuple[str, ...]
    screw: Screw = field(repr=False)


def guide_box(reading: Reading) -> Box | None:
    """One box for all screws of the guide, so that their bearing faces stand on one line."""
    screws = [one.screw for one in reading.labels.screws]
    return screw_box(*screws) if screws else None


def screw_rows(reading: Reading) -> tuple[ScrewRow, ...]:
    """A row a number and group, in the order of the numbers."""
    box = guide_box(reading)
    moves = list(_moves(reading))
    rows = [
        _row(reading, one, group, keys, where, moves, box)
        for one in reading.labels.screws
        for group, (keys, where) in _groups(reading, one).items()
    ]
    return tuple(rows)


def _groups(reading: Reading, one: Numbered) -> dict[str, tuple[list[str], int]]:
    found: dict[str, tuple[list[str], int]] = {}
    for key, numbers in reading.labels.of_hole.items():
        hole = reading.device.things[key]
        assert isinstance(hole, Hole)
        for number, where in numbers:
            if number is one:
                where &= _there(reading, hole)
                keys, before = found.get(hole.group, ([], 0))
                found[hole.group] = ([*keys, key], before | where)
    return found


def _there(reading: Reading, hole: Hole) -> int:
    return reading.configurations.bits(hole.when)


def _moves(reading: Reading) -> Iterator[tuple[Verb, str, str]]:
    """Moves of the main way: verb, key, step id."""
    for passage in reading.proof.passages:
        if passage.stage.remedy is None:
            for one in passage.walked:
                if isinstance(one.doing, Move):
                    yield one.doing.verb, one.doing.thing, passage.step.id


def _row(
    reading: Reading,
    one: Numbered,
    group: str,
    keys: list[str],
    where: int,
    moves: Iterable[tuple[Verb, str, str]],
    box: Box | None,
) -> ScrewRow:
    known = reading.device.groups.get(group)
    holes = [reading.device.things[key] for key in keys]
    out = {step: None for verb, key, step in moves if verb in _OUT and key in keys}
    back = {step: None for verb, key, step in moves if verb in _IN and key in keys}
    first = next(hole for hole in holes if isinstance(hole, Hole))
    return ScrewRow(
        number=one.number,
        first=group == next(iter(_groups(reading, one))),
        svg=screw_svg(one.screw, 1, box, by_use=True),
        designation=whole_words(reading.say, one.screw),
        driver=drive_words(reading.say, one.screw.drive or ""),
        group=known.name.text if known and known.name else group.replace("-", " "),
        holes=tuple(reading.say.hole(hole.hole) for hole in holes if isinstance(hole, Hole)),
        torque=_torque(reading, first, where),
        out=_numbered(reading, out),
        back=_numbered(reading, back),
        captive=first.captive,
        when=reading.when(where, reading.configurations.everywhere),
        keys=tuple(keys),
        screw=one.screw,
    )


def _numbered(reading: Reading, steps: Iterable[str]) -> tuple[tuple[str, str], ...]:
    return tuple((id, reading.numbers.steps[id]) for id in steps)


def _torque(reading: Reading, hole: Hole, where: int) -> Text:
    told = [_figure(reading, torque) for torque, _ in values(reading.proof, hole.torque, where)]
    return reading.say.listed(list(dict.fromkeys(told)), "or") if told else ()


def _figure(reading: Reading, torque: Torque) -> Text:
    if torque.figure is not None:
        return reading.say.said(torque.figure)
    key = f"torque.{torque.word}"
    return reading.say(key) if reading.say.has(key) else text(torque.word or "", Mark.PLAIN)
