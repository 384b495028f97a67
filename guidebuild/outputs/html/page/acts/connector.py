"""Plugs: one line each, by what is printed on them."""

from collections.abc import Iterator, Sequence

from guidebuild.device.acts import Verb
from guidebuild.device.things import Connector
from guidebuild.guide.blocks.act import Act
from guidebuild.outputs.html.page.acts.line import Line, ToolUse
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Walked
from guidebuild.translate.messages.text import Text, text


def lines(reading: Reading, act: Act | None, walked: Sequence[Walked]) -> Iterator[Line]:
    """A line for each plug."""
    for one in walked:
        move = one.doing
        assert isinstance(move, Move)
        plug = reading.device.things[move.thing]
        assert isinstance(plug, Connector)
        tools = ((act.with_ if act is not None else ()) or plug.with_) if _needs_tool(move) else ()
        uses = (ToolUse(tuple(said.text for said in tools)),) if tools else ()
        yield Line(
            do=_order(reading, plug, move.verb),
            things=(plug.key,),
            where=one.where,
            references=(reading.labels.of(plug.key),),
            details=(
                *_name(reading, plug),
                *_style(reading, plug, move.verb),
                *_with(reading, uses),
            ),
            tools=uses,
        )


def _needs_tool(move: Move) -> bool:
    return move.verb is Verb.DISCONNECT


def _order(reading: Reading, plug: Connector, verb: Verb) -> Text:
    name = reading.inside(reading.name(plug.key))
    label = reading.labels.of(plug.key)
    key = f"act.connector.{verb.value}" + ("" if reading.is_printed(plug.key) else "-bare")
    return reading.say(key, name=name, label=label)


def _name(reading: Reading, plug: Connector) -> Iterator[Text]:
    """What the plug is, where the order says only what is printed on it."""
    if reading.is_printed(plug.key):
        yield text(reading.inside(reading.name(plug.key)))


def _style(reading: Reading, plug: Connector, verb: Verb) -> Iterator[Text]:
    """How a plug of this make opens or closes: `turn the flap up first`."""
    key = f"style.{verb.value}.{plug.style.text}" if plug.style else ""
    if key and reading.say.has(key):
        yield reading.say(key)


def _with(reading: Reading, uses: Sequence[ToolUse]) -> Iterator[Text]:
    for use in uses:
        names = [text(reading.inside(reading.tool(id))) for id in use.ids]
        yield reading.say.listed(names, "or")
