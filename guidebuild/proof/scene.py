"""The device as it stands at one moment of the walk, in every configuration."""

from dataclasses import dataclass, field

from guidebuild.device.states import WORDS, Kind
from guidebuild.proof.bench import Bench
from guidebuild.proof.cells import Value
from guidebuild.proof.done import Done
from guidebuild.proof.proof import Snapshot

_UNKNOWN = {kind: int(words["unknown"]) for kind, words in WORDS.items()}


def unknown(kind: Kind) -> int:
    """What may be true of a thing that nobody knows anything about."""
    return _UNKNOWN[kind]


@dataclass(slots=True)
class History:
    """What was worked, in order: (key, the act that did it, where). `spare`: what an act left over."""

    worked: list[tuple[str, Done, int]] = field(default_factory=list)
    spare: list[tuple[str, Done, int]] = field(default_factory=list)


class Scene:
    """Values by key, and the questions and changes that needs and effects are made of.

    The dictionary is copied before the first change after somebody kept it, so a snapshot costs one copy.
    """

    __slots__ = (
        "_kept",
        "bench",
        "cells",
        "configurations",
        "everywhere",
        "history",
        "layout",
        "things",
        "values",
    )

    def __init__(self, bench: Bench, values: dict[str, Value], history: History) -> None:
        self.bench = bench
        self.layout = bench.layout
        self.configurations = bench.configurations
        self.cells = bench.cells
        self.everywhere = bench.cells.everywhere
        self.things = bench.device.things
        self.values = values
        self.history = history
        self._kept = True

    def keep(self) -> dict[str, Value]:
        """The values of this moment, which nobody will change any more."""
        self._kept = True
        return self.values

    def snapshot(self, reach: int) -> Snapshot:
        """This moment, for the configurations that reach it."""
        self._kept = True
        return Snapshot(self.values, reach)

    def branch(self, values: dict[str, Value]) -> "Scene":
        """Another scene that starts from values that were kept; what is worked there counts here, too."""
        return Scene(self.bench, values, self.history)

    def take(self, values: dict[str, Value]) -> None:
        """Go on from values that were kept, or made anew."""
        self.values = values
        self._kept = True

    def surely(self, key: str, states: int) -> int:
        """Where the thing is in one of `states`, whatever is open."""
        value = self.values[key]
        if isinstance(value, int):
            return 0 if value & ~states else self.everywhere
        return self.cells.surely(value, states)

    def perhaps(self, key: str, states: int) -> int:
        """Where the thing may be in one of `states`."""
        value = self.values[key]
        if isinstance(value, int):
            return self.everywhere if value & states else 0
        return self.cells.perhaps(value, states)

    def both(self, one: int, other: int) -> int:
        """Where both hold."""
        if one is other or other is self.everywhere:
            return one
        return other if one is self.everywhere else one & other

    def without(self, one: int, other: int) -> int:
        """Where the first holds and the second does not; never by `~`, which makes a negative number."""
        if not other:
            return one
        return 0 if one is other or other is self.everywhere else one ^ (one & other)

    def set(self, key: str, value: Value) -> None:
        """A thing has a new value."""
        if self.values[key] is value:
            return
        if self._kept:
            self.values = self.values.copy()
            self._kept = False
        self.values[key] = value

    def put(self, key: str, where: int, states: int) -> None:
        """A thing comes into `states` in `where`."""
        self.set(key, self.cells.put(self.values[key], where, states))

    def turn(self, key: str, sure: int, maybe: int, states: int, to: int) -> None:
        """Of what a thing may be, each of `states` becomes `to` in `sure`; in `maybe` it may have."""

        def surely_turned(cell: int) -> int:
            return cell & ~states | to if cell & states else cell

        def perhaps_turned(cell: int) -> int:
            return cell | to if cell & states else cell

        value = self.cells.change(self.values[key], sure, surely_turned)
        only_maybe = self.without(maybe, sure)
        self.set(key, self.cells.change(value, only_maybe, perhaps_turned))

    def forget(self, key: str, where: int) -> None:
        """Nobody knows any more what state a thing is in."""
        self.put(key, where, unknown(self.things[key].kind))

    def found(self, key: str, where: int) -> list[tuple[int, int]]:
        """The sets of states that a thing has somewhere in `where`, each with where it has them."""
        cells = ((cell, bits & where) for cell, bits in self.cells.of(self.values[key]))
        return [(cell, bits) for cell, bits in cells if bits]
