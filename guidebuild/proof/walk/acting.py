"""One act as written: each single act asked what it needs, then done."""

from collections.abc import Iterable
from typing import NamedTuple

from guidebuild.guide.blocks.act import Act
from guidebuild.proof.asking import Asking, Lack
from guidebuild.proof.cells import Value
from guidebuild.proof.deeds import Deed
from guidebuild.proof.done import Around, Done
from guidebuild.proof.effects.doubt import doubt
from guidebuild.proof.effects.power import lose_power
from guidebuild.proof.mistake import Need
from guidebuild.proof.needs.here import here, state
from guidebuild.proof.plain import ABSENT, LEFT
from guidebuild.proof.scene import Scene
from guidebuild.proof.shorthand import Shorthand
from guidebuild.proof.walk.record import Record
from guidebuild.proof.watch import clear
from guidebuild.source.span import Span

# Where these fail, what was worked is as doubtful as what is to blame.
_SPOILS = (Need.SHUT, Need.BETWEEN)


def do_act(scene: Scene, shorthand: Shorthand, act: Act, around: Around, record: Record) -> None:
    """Every word of an act in its order, where the act is done at all."""
    written = shorthand.written(act)
    where = scene.configurations.both(around.where, written.where)
    if not where:
        return
    told = 0  # where an act forgot its `when`, its first word that is not there is finding enough
    for span, meaning in written.words:
        missing = scene.without(where & meaning.nowhere, told) if meaning.nowhere else 0
        if missing:
            _not_here(Done(around, *meaning.first, act, span, missing, scene.keep()), record)
            told |= missing
        word = Word(around, act, span, where)
        _do_word(scene, word, meaning.deeds, record)


class Word(NamedTuple):
    """One id as written, and where it is done."""

    around: Around
    act: Act
    span: Span
    where: int


def _do_word(scene: Scene, word: Word, deeds: Iterable[Deed], record: Record) -> None:
    """What one id stands for. Screws that nothing tells apart are moved as the first of them was."""
    around, act, span, where = word
    twin: int | None = None
    before: Value = 0
    after: Value = 0
    then = 0
    for deed in deeds:
        here = scene.configurations.both(where, deed.there)
        if not here:
            continue
        work = Done(around, deed.verb, deed.key, act, span, here, scene.keep())
        record.done.append(work)
        scene.history.worked.append((deed.key, work, here))
        value = scene.values[deed.key]
        if twin is not None and deed.twin == twin and value is before and here is then:
            scene.set(deed.key, after)
        elif do_deed(scene, deed, work, record):
            twin, before, after, then = deed.twin, value, scene.values[deed.key], here
        else:
            twin = None


def do_deed(scene: Scene, deed: Deed, work: Done, record: Record) -> bool:
    """One act on one thing, in the configurations that have it; whether it lacked nothing."""
    if _is_plain(scene, deed, work):
        scene.put(deed.key, work.where, deed.end)
        return True
    sound = True
    doubtful = scene.surely(deed.key, deed.never) & work.where
    ask = Asking(scene, work, deed.thing, work.where)
    if doubtful:
        sound = _ask(ask, deed, record)
    for need, question in deed.needs:
        if not ask.where:
            break
        lack = question(ask)
        if lack is not None:
            _unmet(ask, need, lack, record)
            sound = False
    for effect in deed.effects:
        effect(ask)
    if deed.sources or not sound:
        _mind_the_power(ask)
    return sound


def _is_plain(scene: Scene, deed: Deed, work: Done) -> bool:
    """Whether it lacks nothing for sure, and just changes its own state: so for nearly every act of a sound guide."""
    if not deed.plain or deed.source or getattr(work.act, "torque", None) is not None:
        return False
    value = scene.values[deed.key]
    if isinstance(value, int):
        if value & LEFT or not value & deed.starts:
            return False
    elif work.where & (scene.cells.surely(value, deed.never) | scene.cells.perhaps(value, LEFT)):
        return False
    return clear(scene, deed.watch, work.where)


def _ask(ask: Asking, deed: Deed, record: Record) -> bool:
    """Here, and in a state that the act starts from."""
    sound = True
    for need, question in ((Need.HERE, here), (Need.STATE, state)):
        lack = question(ask, deed.starts)
        if lack is not None:
            _unmet(ask, need, lack, record)
            sound = False
    return sound


def _mind_the_power(ask: Asking) -> None:
    """Where a source is not as it was before this act."""
    values, before, changed = ask.scene.values, ask.work.values, 0
    for plug in ask.scene.layout.sources:
        changed |= ask.scene.cells.differ(values[plug.key], before[plug.key])
    if changed:
        lose_power(ask.scene, changed)


def _unmet(ask: Asking, need: Need, lack: Lack, record: Record) -> None:
    """One finding; what it blames is unknown from here, and no more is asked where it holds."""
    record.lacks(need, ask.work, ask.key, ask.scene.found(ask.key, lack.where), lack)
    for key, where in lack.blames.items():
        doubt(ask.scene, key, where)
    ask.drop(lack.where)
    if need in _SPOILS:
        ask.spoilt |= lack.where


def _not_here(work: Done, record: Record) -> None:
    """No unit of these has the thing: a finding, and nothing is done."""
    record.lacks(Need.HERE, work, work.key, [(ABSENT, work.where)], Lack(work.where, {}))
