"""Switching on and off."""

from collections.abc import Iterator, Sequence

from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.power import PowerAct
from guidebuild.outputs.html.page.acts.line import Line
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Walked


def lines(reading: Reading, act: Act | None, walked: Sequence[Walked]) -> Iterator[Line]:
    """A line for each."""
    for one in walked:
        move = one.doing
        assert isinstance(move, Move)
        hold = act.hold if isinstance(act, PowerAct) else None
        yield Line(
            do=reading.say(f"act.power.{move.verb.value}"),
            things=(move.thing,),
            where=one.where,
            details=(reading.say("act.hold-key", time=reading.say.time(hold.value)),)
            if hold
            else (),
        )
