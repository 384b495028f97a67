"""One act in hand while its needs are asked: what, where, and where nothing is wrong with it yet."""

from dataclasses import dataclass
from typing import NamedTuple

from guidebuild.device.states import Kind
from guidebuild.device.things import Thing
from guidebuild.proof.mistake import Move
from guidebuild.proof.plain import LEFT
from guidebuild.proof.scene import Scene


class Lack(NamedTuple):
    """A need that surely fails in `where`, and what is to blame for it, each with its configurations."""

    where: int
    blames: dict[str, int]


@dataclass(slots=True)
class Asking:
    """`where`: still to be asked. `usual` of it: the thing is surely not on an old unit; `left`: it surely is.

    `done`: all configurations in which the act is taken as done, whatever it lacks. `spoilt`: those in which
    it then leaves the thing in a state that nobody knows.
    """

    scene: Scene
    move: Move
    thing: Thing
    where: int
    usual: int
    left: int
    done: int
    spoilt: int = 0

    @property
    def key(self) -> str:
        """The thing's key."""
        return self.thing.key

    @property
    def kind(self) -> Kind:
        """The thing's kind."""
        return self.thing.kind

    def drop(self, where: int) -> None:
        """Ask no more in these configurations: one act, one finding."""
        without = self.scene.without
        self.where = without(self.where, where)
        self.usual = without(self.usual, where)
        self.left = without(self.left, where)


def asking(scene: Scene, move: Move, where: int) -> Asking:
    """An act, before its needs are asked."""
    key = move.thing
    maybe = scene.perhaps(key, LEFT)
    if not maybe:
        return Asking(scene, move, scene.things[key], where, where, 0, where)
    left = scene.both(where, scene.surely(key, LEFT))
    return Asking(scene, move, scene.things[key], where, scene.without(where, maybe), left, where)


def lack(where: int, blames: dict[str, int]) -> Lack | None:
    """A lack, if there is one."""
    return Lack(where, blames) if where else None


def lack_of(blames: dict[str, int]) -> Lack | None:
    """What fails just where something is to blame."""
    where = 0
    for bits in blames.values():
        where |= bits
    return Lack(where, blames) if where else None
