"""What a device holds: discharged, drained, relaxed, filled, set; each kind has its own verb."""

from collections.abc import Iterator, Sequence

from guidebuild.device.things import Store
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.store import StoreAct
from guidebuild.outputs.html.page.acts.line import Line, ToolUse
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Walked


def lines(reading: Reading, act: Act | None, walked: Sequence[Walked]) -> Iterator[Line]:
    """A line for each store."""
    for one in walked:
        move = one.doing
        assert isinstance(move, Move)
        store = reading.device.things[move.thing]
        assert isinstance(store, Store)
        key = f"act.store.{move.verb.value}.{store.store}"
        key = key if reading.say.has(key) else f"act.store.{move.verb.value}.any"
        hold = act.hold if isinstance(act, StoreAct) else None
        by = act.by if isinstance(act, StoreAct) else None
        tools = act.with_ if act is not None else ()
        yield Line(
            do=reading.say(key, name=reading.inside(reading.store_name(store))),
            things=(store.key,),
            where=one.where,
            references=tuple(filter(None, (reading.labels.of(store.key),))),
            details=(reading.say("act.hold", time=reading.say.time(hold.value)),) if hold else (),
            notes=(reading.say("act.by", by=by.text),) if by else (),
            tools=(ToolUse(tuple(said.text for said in tools)),) if tools else (),
        )
