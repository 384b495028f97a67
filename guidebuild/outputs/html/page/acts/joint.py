"""What holds without a screw: clips, hooks, seals, tape; each kind has its own verb."""

from collections.abc import Iterator, Sequence

from guidebuild.device.acts import Verb
from guidebuild.device.things import Joint
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.joint import JointAct
from guidebuild.outputs.html.page.acts.line import Line, ToolUse
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Walked
from guidebuild.translate.messages.text import Text, text


def lines(reading: Reading, act: Act | None, walked: Sequence[Walked]) -> Iterator[Line]:
    """A line for each joint."""
    for one in walked:
        move = one.doing
        assert isinstance(move, Move)
        joint = reading.device.things[move.thing]
        assert isinstance(joint, Joint)
        tools = _tools(act, joint, move.verb)
        key = f"act.joint.{move.verb.value}.{joint.joint}"
        key = key if reading.say.has(key) else f"act.joint.{move.verb.value}.any"
        yield Line(
            do=reading.say(key, name=reading.inside(reading.name(joint.key))),
            things=(joint.key,),
            where=one.where,
            references=(reading.labels.of(joint.key),),
            details=tuple(_details(reading, act, joint, move.verb, tools)),
            tools=tools,
        )


def _tools(act: Act | None, joint: Joint, verb: Verb) -> tuple[ToolUse, ...]:
    if verb is not Verb.RELEASE:
        return ()
    said = (act.with_ if act is not None else ()) or joint.with_
    return (ToolUse(tuple(one.text for one in said)),) if said else ()


def _details(
    reading: Reading, act: Act | None, joint: Joint, verb: Verb, tools: tuple[ToolUse, ...]
) -> Iterator[Text]:
    say = reading.say
    for use in tools:
        yield say.listed([text(reading.inside(reading.tool(id))) for id in use.ids], "or")
    if isinstance(act, JointAct):
        for name in ("heat", "max_depth", "press", "cure"):
            quantity = getattr(act, name)
            if quantity is not None:
                said = say.time(quantity.value) if name in ("press", "cure") else say.said(quantity)
                yield say(f"act.{name.replace('_', '-')}", quantity=said)
    if verb is Verb.RELEASE and joint.single_use:
        yield say("act.never-again")
