"""Shorthand written out: one act on one thing at a time, in the order of the hands."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.device.states import Kind
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.step import Step
from guidebuild.source.said import Said
from tests.proof.oracle.table import DO_UP, TABLE, UNDO
from tests.proof.oracle.world import World


@dataclass(frozen=True)
class Deed:
    """`missing`: what the word means does not exist in this configuration, and nothing is done."""

    verb: Verb
    thing: str
    act: Act
    step: Step
    word: Said
    missing: bool = False
    do_up: frozenset[str] = frozenset()  # closed later, by their own act


def written_out(world: World, act: Act, step: Step) -> Iterator[Deed]:
    """What is undone first, then the act on its targets, then what is done up."""
    undo = act.undo if isinstance(act, PartAct) else ()
    do_up = act.do_up if isinstance(act, PartAct) else ()
    later = frozenset(world.keys(do_up))
    words = [(said, UNDO) for said in undo]
    words += [(said, dict.fromkeys(Kind, act.verb)) for said in act.targets]
    words += [(said, DO_UP) for said in do_up]
    for said, verbs in words:
        known = [
            key
            for key in world.device.names.get(said.text, ())
            if (kind := world.device.things[key].kind) in verbs and (kind, verbs[kind]) in TABLE
        ]
        here = [key for key in known if key in world.things]
        for key in here or known[:1]:
            verb = verbs[world.device.things[key].kind]
            if key in here and world.captive(key):
                verb = {Verb.REMOVE: Verb.LOOSEN, Verb.REFIT: Verb.TIGHTEN}.get(verb, verb)
            yield Deed(verb, key, act, step, said, not here, later)
