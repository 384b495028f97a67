"""One act as written: each single act asked what it needs, then done."""

from guidebuild.guide.blocks.act import Act
from guidebuild.proof.asking import Asking, Lack, asking
from guidebuild.proof.effects.order import EFFECTS
from guidebuild.proof.effects.power import lose_power
from guidebuild.proof.mistake import Move, Need
from guidebuild.proof.needs.order import NEEDS
from guidebuild.proof.plain import ABSENT
from guidebuild.proof.scene import Scene
from guidebuild.proof.shorthand import Shorthand, Word
from guidebuild.proof.walk.record import Around

_SPOILS = (
    Need.SHUT,
    Need.BETWEEN,
)  # where these fail, what was worked is as doubtful as what is to blame


def do_act(scene: Scene, shorthand: Shorthand, act: Act, around: Around) -> None:
    """Every word of an act in its order, where the act is done at all."""
    where = scene.configurations.both(around.where, scene.configurations.bits(act.when))
    if not where:
        return
    told = (
        0  # of one act that forgot its `when`, the first word that is not there is finding enough
    )
    for word in shorthand.words(act):
        if word.nowhere:
            missing = scene.without(where & word.nowhere, told)
            _not_here(scene, act, word, missing, around)
            told |= missing
        for verb, key, there in word.acts:
            done = scene.configurations.both(where, there)
            if done:
                do_move(scene, Move(verb, key, act, around.step, word.span), done, around)


def do_move(scene: Scene, move: Move, where: int, around: Around) -> None:
    """One act on one thing, in the configurations that have it."""
    around.walk(scene, move, where)
    sources = [scene.values[plug.key] for plug in scene.layout.sources]
    ask = asking(scene, move, where)
    kind = ask.thing.kind
    for need, question in NEEDS[kind, move.verb]:
        lack = question(ask)
        if lack is not None:
            _unmet(ask, need, lack, around)
            if not ask.where:
                break
    for effect in EFFECTS[kind, move.verb]:
        effect(ask)
    scene.history.worked.append((move.thing, move, where))
    for plug, before in zip(scene.layout.sources, sources, strict=True):
        if scene.values[plug.key] is not before:
            lose_power(ask)
            break


def _unmet(ask: Asking, need: Need, lack: Lack, around: Around) -> None:
    """One finding; what it blames is unknown from here, and no more is asked where it holds."""
    scene, move = ask.scene, ask.move
    found = scene.found(move.thing, lack.where)
    around.lacks(need, move, move.thing, found, lack, move.span)
    for key, where in lack.blames.items():
        scene.forget(key, where)
    ask.drop(lack.where)
    if need in _SPOILS:
        ask.spoilt |= lack.where


def _not_here(scene: Scene, act: Act, word: Word, where: int, around: Around) -> None:
    """No unit of these has the thing: a finding, and nothing is done."""
    if where:
        verb, key = word.first
        move = Move(verb, key, act, around.step, word.span)
        around.lacks(Need.HERE, move, key, ABSENT, Lack(where, {}), word.span)
