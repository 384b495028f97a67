"""One act in hand while its needs are asked: what, where, and where nothing is wrong with it yet."""

from typing import NamedTuple

from guidebuild.device.acts import Verb
from guidebuild.device.things import Thing
from guidebuild.proof.done import Done
from guidebuild.proof.plain import LEFT
from guidebuild.proof.scene import Scene


class Lack(NamedTuple):
    """A need that surely fails in `where`, and what is to blame for it, each with its configurations."""

    where: int
    blames: dict[str, int]


class Asking:
    """`where`: still to be asked. `usual` of it: the thing is surely not on an old unit; `left`: it surely is.

    `done`: all configurations in which the act is taken as done, whatever it lacks. `spoilt`: those in which
    it then leaves the thing in a state that nobody knows.
    """

    __slots__ = ("done", "key", "left", "scene", "spoilt", "thing", "usual", "where", "work")

    def __init__(self, scene: Scene, work: Done, thing: Thing, where: int) -> None:
        self.scene = scene
        self.work = work
        self.thing = thing
        self.key = thing.key
        self.done = self.where = self.usual = where
        self.left = self.spoilt = 0
        maybe = scene.perhaps(thing.key, LEFT)
        if maybe:
            self.left = scene.both(where, scene.surely(thing.key, LEFT))
            self.usual = scene.without(where, maybe)

    @property
    def verb(self) -> Verb:
        """The single act's verb."""
        assert self.work.verb is not None
        return self.work.verb

    def drop(self, where: int) -> None:
        """Ask no more in these configurations: one act, one finding."""
        without = self.scene.without
        self.where = without(self.where, where)
        self.usual = without(self.usual, where)
        self.left = without(self.left, where)


def lack(where: int, blames: dict[str, int]) -> Lack | None:
    """A lack, if there is one."""
    return Lack(where, blames) if where else None


def lack_of(blames: dict[str, int]) -> Lack | None:
    """What fails just where something is to blame."""
    where = 0
    for bits in blames.values():
        where |= bits
    return Lack(where, blames) if where else None
