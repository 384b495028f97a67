"""Comparing two screws: the same on the bag, or the same but for the length."""

from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal

from guidebuild.device.acts import Verb
from guidebuild.device.record import Device
from guidebuild.device.screw import Screw
from guidebuild.device.things import Case, Hole
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof, Walked
from guidebuild.proof.questions.cases import values
from guidebuild.proof.questions.history import walked
from guidebuild.source.remembered import remembered


def surely_another(one: Screw, other: Screw) -> bool:
    """Whether both are told and differ in thread, length, head or drive; what is not told may be alike."""
    return any(
        first is not None and second is not None and first != second
        for first, second in zip(_looks(one), _looks(other), strict=True)
    )


def differ_only_in_length(one: Screw, other: Screw) -> bool:
    """Same thread, head and drive as far as both are told, and two lengths that are told."""
    lengths = one.length, other.length
    if None in lengths or lengths[0] == lengths[1]:
        return False
    return _looks(one)[:-1] == _looks(other)[:-1]


def where_alike(proof: Proof, one: Hole, other: Hole, where: int) -> int:
    """The configurations of `where` in which the two holes' screws differ only in length."""
    found = 0
    for first, here in values(proof, one.screw, where):
        for second, both in values(proof, other.screw, here):
            if differ_only_in_length(first, second):
                found |= both
    return found


@remembered
def lengths_apart(device: Device) -> Mapping[str, tuple[Hole, ...]]:
    """By hole: the others whose screw may differ from its own only in length, if any does, somewhere."""
    kinds: dict[tuple[Case[Screw], ...], list[Hole]] = {}
    for hole in device.holes:
        kinds.setdefault(hole.screw, []).append(hole)
    alike = {one: {other for other in kinds if _may_be_alike(one, other)} for one in kinds}
    return {
        hole.key: tuple(other for other in device.holes if other.screw in alike[hole.screw])
        for hole in device.holes
        if alike[hole.screw]
    }


def _may_be_alike(one: Sequence[Case[Screw]], other: Sequence[Case[Screw]]) -> bool:
    return any(
        differ_only_in_length(first.value, second.value) for first in one for second in other
    )


def where_another(proof: Proof, one: Hole, other: Hole, where: int) -> int:
    """The configurations of `where` in which the two holes surely take different screws."""
    found = 0
    for first, here in values(proof, one.screw, where):
        for second, both in values(proof, other.screw, here):
            if surely_another(first, second):
                found |= both
    return found


def _looks(screw: Screw) -> tuple[str | Decimal | None, ...]:
    return screw.thread, screw.head, screw.drive, screw.length


_PUT_IN = frozenset({Verb.REFIT, Verb.START})


@remembered
def screws_going_in(proof: Proof) -> tuple[tuple[Hole, Move, Walked], ...]:
    """Every screw that is put in, in document order."""
    return tuple(_going_in(proof))


def _going_in(proof: Proof) -> Iterator[tuple[Hole, Move, Walked]]:
    for one in walked(proof):
        move = one.doing
        if isinstance(move, Move) and move.verb in _PUT_IN:
            thing = proof.device.things[move.thing]
            if isinstance(thing, Hole):
                yield thing, move, one
