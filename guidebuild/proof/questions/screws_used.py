"""The screws that a guide puts its driver to, each with the configurations in which it is that screw."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.device.screw import Screw
from guidebuild.device.things import Hole
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.cases import values
from guidebuild.proof.questions.history import walked
from guidebuild.source.remembered import remembered

DRIVEN = frozenset({Verb.REMOVE, Verb.LOOSEN, Verb.TIGHTEN, Verb.REFIT, Verb.START})
TIGHTENED = frozenset({Verb.TIGHTEN, Verb.REFIT})


@dataclass(frozen=True, slots=True)
class Driven:
    """One screw as one act works it, in `where`."""

    hole: Hole
    screw: Screw
    move: Move
    where: int


def driven(proof: Proof, verbs: frozenset[Verb] = DRIVEN) -> Iterator[Driven]:
    """Every screw at every act of these verbs, in document order."""
    return (one for one in _all_driven(proof) if one.move.verb in verbs)


@remembered
def _all_driven(proof: Proof) -> tuple[Driven, ...]:
    return tuple(_driven(proof))


def _driven(proof: Proof) -> Iterator[Driven]:
    things = proof.device.things
    for one in walked(proof):
        move = one.doing
        if isinstance(move, Move) and move.verb in DRIVEN:
            hole = things[move.thing]
            if isinstance(hole, Hole):
                for screw, where in values(proof, hole.screw, one.where):
                    yield Driven(hole, screw, move, where)


@remembered
def screws_used(proof: Proof) -> tuple[Driven, ...]:
    """Each screw that the guide works, once: at its first act, in all configurations in which it is worked."""
    found: dict[tuple[str, str], Driven] = {}
    for one in driven(proof):
        key = one.hole.key, one.screw.text
        first = found.get(key)
        found[key] = (
            one
            if first is None
            else Driven(one.hole, one.screw, first.move, first.where | one.where)
        )
    return tuple(found.values())
