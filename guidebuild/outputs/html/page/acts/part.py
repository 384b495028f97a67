"""Parts: lifted, taken off, put on, exchanged."""

from collections.abc import Iterator, Sequence

from guidebuild.device.acts import REPLACING, Verb
from guidebuild.device.things import Part
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.part import PartAct
from guidebuild.outputs.html.page.acts.line import Line
from guidebuild.outputs.html.page.kits import supplied_as
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Walked
from guidebuild.translate.messages.text import Text, text


def lines(reading: Reading, act: Act | None, walked: Sequence[Walked]) -> Iterator[Line]:
    """A line for each part."""
    for one in walked:
        move = one.doing
        assert isinstance(move, Move)
        yield Line(
            do=_order(reading, move),
            things=(move.thing,),
            where=one.where,
            references=(reading.labels.of(move.thing),),
            details=tuple(_details(reading, act, move, one.where)),
        )


def _order(reading: Reading, move: Move) -> Text:
    part = reading.device.part(move.thing)
    key = f"act.part.{move.verb.value}"
    if part.packing and reading.say.has(f"{key}-packing"):
        key += "-packing"
    return reading.say(key, name=reading.inside(reading.name(part.key)))


def _details(reading: Reading, act: Act | None, move: Move, where: int) -> Iterator[Text]:
    say = reading.say
    if isinstance(act, PartAct):
        if act.angle is not None:
            yield say("act.to-angle", angle=say.said(act.angle))
        if act.first:
            names = [text(reading.inside(reading.name(key))) for key in _keys(reading, act)]
            yield say("act.first", names=say.listed(names))
        if act.support is not None:
            yield say("act.support", support=act.support.text)
    if move.verb in REPLACING:
        yield from supplied_as(reading, move.thing, where)
        part = reading.device.things[move.thing]
        if isinstance(part, Part) and part.waste is not None and move.verb is Verb.EXCHANGE:
            yield say("act.waste", waste=_waste(reading, part.waste.text))


def _waste(reading: Reading, word: str) -> str:
    key = f"waste.{word}"
    return reading.say.plain(key) if reading.say.has(key) else word


def _keys(reading: Reading, act: PartAct) -> Iterator[str]:
    for said in act.first:
        yield from reading.device.names.get(said.text, ())
