"""Which hazards of the record a guide handles, and where it tells of them."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.acts import OPENING, Verb
from guidebuild.device.record import Device, Hazard
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import cautions, steps_with
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Step
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Passage, Proof
from guidebuild.source.said import Said
from guidebuild.source.span import Span

_LAYING_OPEN = OPENING | {Verb.LIFT, Verb.LOOSEN}
_WORD = re.compile(r"[^\W\d_]{4,}")
_ALIKE = 3  # so many longer words in common, and a caution of the guide's own is taken to be about the hazard


@dataclass(frozen=True, slots=True)
class Handled:
    """The first act of a step that handles something which the record says is a hazard to handle."""

    hazard: Hazard
    move: Move
    where: int
    passage: Passage


def handled(proof: Proof) -> Iterator[Handled]:
    """Each hazard in each step that handles it, in document order."""
    for passage in proof.passages:
        for hazard in proof.device.hazards.values():
            keys = keys_of(proof.device, hazard)
            moves = [one for one in passage.walked if _is_of(one.doing, keys)]
            if moves and isinstance(moves[0].doing, Move):
                where = 0
                for one in moves:
                    where |= one.where
                yield Handled(hazard, moves[0].doing, where, passage)


def keys_of(device: Device, hazard: Hazard) -> frozenset[str]:
    """The things that it is a hazard to handle."""
    return frozenset(
        key for said in hazard.when_handling for key in device.names.get(said.text, ())
    )


def told_where(proof: Proof, one: Handled) -> int:
    """The configurations in which the hazard is told in the same step, or earlier in the same stage.

    Where something only goes back, it is enough that any earlier step of the main way told of it.
    """
    found = 0
    for stage, step in _before(proof.guide, one):
        here = stage.id == one.passage.stage.id or one.move.verb not in _LAYING_OPEN
        shown = proof.configurations.bits(step.when)
        for caution in cautions(step) if here else ():
            if tells(caution, one.hazard):
                found |= shown & proof.configurations.bits(caution.when)
    return found


def _before(guide: Guide, one: Handled) -> Iterator[tuple[Stage, Step]]:
    """Steps of the main way and of its own stage, up to the one that handles it."""
    for stage in guide.stages:
        mine = stage.id == one.passage.stage.id
        for step in stage.steps if mine or stage.remedy is None else ():
            yield stage, step
            if step is one.passage.step or step.id == one.passage.step.id:
                return


def tells(caution: Caution, hazard: Hazard) -> bool:
    """Whether a caution is about this hazard: it names it, or uses its words."""
    if caution.hazards:
        return hazard.id in {said.text for said in caution.hazards}
    own = _words(said.text for said in (caution.hazard, caution.result) if said)
    known = _words(said.text for said in (hazard.hazard, hazard.result) if said)
    return len(own & known) >= min(_ALIKE, len(known))


def _words(texts: Iterator[str]) -> set[str]:
    return {word.lower() for text in texts for word in _WORD.findall(text)}


def _is_of(doing: object, keys: frozenset[str]) -> bool:
    return isinstance(doing, Move) and doing.thing in keys


def targets(device: Device, act: Act) -> set[str]:
    """Keys of everything that an act names, what it undoes and does up included."""
    said = act.targets
    if isinstance(act, PartAct):
        said = (*said, *act.undo, *act.do_up)
    return {key for one in said for key in device.names.get(one.text, ())}


@dataclass(frozen=True, slots=True)
class Message:
    """A safety message of the guide or of its record; `span`: its signal word, or the hazard's id."""

    level: str
    outcome: str  # what it says of the hazard and its result
    span: Span


def safety_messages(proof: Proof) -> Iterator[Message]:
    """The guide's own, then those of the record."""
    for step in steps_with(proof.guide, Caution):
        for caution in cautions(step):
            if caution.level is not None:
                yield Message(
                    caution.level.text, _outcome(caution.hazard, caution.result), caution.level.span
                )
    for hazard in proof.device.hazards.values():
        yield Message(hazard.level, _outcome(hazard.hazard, hazard.result), hazard.span)


def _outcome(*said: Said | None) -> str:
    return " ".join(one.text for one in said if one)
