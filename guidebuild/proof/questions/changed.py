"""What the record wants set after a part is changed (`after-change`), as far as no later step of the guide does it."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.acts import REPLACING, Verb
from guidebuild.device.things import Part, Store
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof


@dataclass(frozen=True, slots=True)
class Unset:
    """`part` is changed by `move`, and nothing sets `store` after it in the configurations `where`."""

    part: str
    store: str
    move: Move
    where: int


def left_unset(proof: Proof) -> tuple[Unset, ...]:
    """Each part and store once, in the order of the work; what the guide's `after` names is not left."""
    found: dict[tuple[str, str], Unset] = {}
    for move, where in _moves(proof):
        thing = proof.device.things[move.thing]
        if isinstance(thing, Part) and move.verb in REPLACING:
            for store in _wanted(proof, thing):
                before = found.get((thing.key, store))
                bits = where | (before.where if before else 0)
                found[thing.key, store] = Unset(thing.key, store, move, bits)
        elif isinstance(thing, Store) and move.verb is Verb.RESTORE:
            for pair, one in found.items():
                if pair[1] == thing.key:
                    found[pair] = Unset(one.part, one.store, one.move, one.where & ~where)
    return tuple(one for one in found.values() if one.where and not _is_named(proof, one.store))


def _moves(proof: Proof) -> Iterator[tuple[Move, int]]:
    for passage in proof.passages:
        if passage.stage.remedy is None:
            for one in passage.walked:
                if isinstance(one.doing, Move):
                    yield one.doing, one.where


def _wanted(proof: Proof, part: Part) -> Iterator[str]:
    for said in part.after_change:
        for key in proof.device.names.get(said.text, ()):
            if isinstance(proof.device.things[key], Store):
                yield key


def _is_named(proof: Proof, store: str) -> bool:
    """Whether the author tells the reader to do it after the work."""
    thing = proof.device.things[store]
    name = (thing.name.text if thing.name else thing.id.replace("-", " ")).casefold()
    return any(name in said.text.casefold() for said in proof.guide.after)
