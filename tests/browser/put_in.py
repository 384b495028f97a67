"""Which step puts each screw in its hole: worked out act by act, without anything that the page is made with."""

from collections.abc import Iterator

from guidebuild.device.acts import Verb
from guidebuild.device.things import Hole
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.content import GuideRead
from guidebuild.guide.step import Fork, Item
from tests.proof.fuzz.answers import valid
from tests.proof.oracle.conditions import Answers, holds
from tests.proof.oracle.deeds import Deed, written_out
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.start import start
from tests.proof.oracle.walk import whole_flow
from tests.proof.oracle.world import World

_OUT = frozenset({Verb.REMOVE})
_IN = frozenset({Verb.START, Verb.REFIT, Verb.TIGHTEN})


def every_answer(read: GuideRead) -> list[Answers]:
    """Each unit that a reader can have."""
    return valid(read.guide.options, read.guide.exclude)


def put_in(read: GuideRead, answers: Answers) -> dict[str, str]:
    """Key of a hole -> id of the step that puts a screw in it last; captive screws can't be left over."""
    world = World(read.guide, read.device, answers)
    out: set[str] = set()
    found: dict[str, str] = {}
    for deed in _deeds(start(world)):
        thing = world.things.get(deed.thing)
        if not isinstance(thing, Hole) or thing.captive or deed.missing:
            continue
        if deed.verb in _OUT:
            out.add(thing.key)
        elif deed.verb in _IN and (thing.key in out or deed.verb is not Verb.TIGHTEN):
            out.discard(thing.key)
            found[thing.key] = deed.step.id
    return found


def _deeds(moment: Moment) -> Iterator[Deed]:
    answers = moment.world.answers
    for stage in moment.world.guide.stages:
        for step in stage.steps if stage.remedy is None and holds(stage.when, answers) else ():
            if holds(step.when, answers):
                for act in _acts(whole_flow(moment, step), answers):
                    yield from written_out(moment.world, act, step)


def _acts(flow: list[Item | Fork], answers: Answers) -> Iterator[Act]:
    """Of several methods the first that applies: all of them end alike, which the proof holds."""
    for item in flow:
        if isinstance(item, Act) and holds(item.when, answers):
            yield item
        elif isinstance(item, Fork):
            ways = [one for one in item.methods if holds(one.when, answers)]
            yield from _acts(list(ways[0].items), answers) if ways else ()
