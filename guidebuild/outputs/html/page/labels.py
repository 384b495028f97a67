"""What stands on drawings, in lines and on pockets: a number for each kind of screw, letters, plug names.

Identical screws share a number in the whole guide. A plug has what is printed on it, taken from the end of its
name (`Battery plug P1`); one on which nothing is printed has a letter, as a part has, since a made-up P7 would
be looked for in vain.
"""

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from itertools import product

from guidebuild.device.acts import REPLACING
from guidebuild.device.screw import Screw
from guidebuild.device.states import Kind
from guidebuild.device.things import Hole, Store, Thing
from guidebuild.draw.cases import Labelled
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.cases import values
from guidebuild.source.remembered import remembered

_LAST = re.compile(r"^(.*?)[ \u00a0]([A-Z]{1,3}\d{0,3})$")
_ANYWHERE = re.compile(
    r"(?:^|[ \u00a0])([A-Z]{1,3}\d{1,3})(?=[ \u00a0]|$)"
)  # a translation may move it
_LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ"  # without I and O, which look like figures


@dataclass(frozen=True, slots=True)
class Numbered:
    """A screw of the guide with its number."""

    number: str
    screw: Screw


@dataclass(frozen=True, slots=True)
class Labels:
    """`of_hole`: the numbers of a hole's screw, each with the configurations in which it is the one."""

    screws: tuple[Numbered, ...]
    of_hole: Mapping[str, tuple[tuple[Numbered, int], ...]]
    of_thing: Mapping[str, str]
    loose: tuple[str, ...] = ()  # keys of the screws that are laid on the tray: all but the captive

    def of(self, key: str) -> str:
        """What stands on the leader of a thing; empty where it has none."""
        holes = self.of_hole.get(key)
        return holes[0][0].number if holes else self.of_thing.get(key, "")

    def on_drawings(self, where: int) -> Labelled:
        """Every label by key, and the screws of the holes that have several, as drawings in `where` take them."""
        usual = _usual(self)
        if not _several(self):
            return usual
        here = {
            key: next((one for one, bits in self.of_hole[key] if bits & where), None)
            for key in _several(self)
        }
        numbers = {key: one.number for key, one in here.items() if one}
        screws = {key: one.screw for key, one in here.items() if one}
        return Labelled({**usual.labels, **numbers}, screws)

    @property
    def apart(self) -> frozenset[int]:
        """Sets of configurations in which a hole has a screw of its own."""
        return frozenset(bits for key in _several(self) for _, bits in self.of_hole[key])


@remembered
def _usual(labels: Labels) -> Labelled:
    numbers = {key: labels.of(key) for key in labels.of_hole}
    return Labelled({**labels.of_thing, **numbers}, {})


@remembered
def _several(labels: Labels) -> tuple[str, ...]:
    """Holes with other screws in other configurations."""
    return tuple(key for key, some in labels.of_hole.items() if len(some) > 1)


def printed(name: str) -> tuple[str, str]:
    """A name without what is printed on the thing, and that: `("Battery plug", "P1")`."""
    found = _LAST.match(name)
    if found:
        return found[1], found[2]
    inside = _ANYWHERE.search(name)
    if inside is None:
        return name, ""
    return " ".join((name[: inside.start()] + " " + name[inside.end() :]).split()), inside[1]


def labels(proof: Proof) -> Labels:
    """The labels of everything that the guide works on, in the order in which it is met."""
    worked = list(dict.fromkeys(_worked(proof)))
    screws, of_hole = _screws(proof, [key for key in worked if key in _holes(proof)])
    things = [proof.device.things[key] for key in worked]
    own = {
        plug.key: printed(plug.name.text)[1]
        for plug in proof.device.connectors
        if plug.name is not None
    }
    loose = tuple(key for key in of_hole if not _is_captive(proof.device.things[key]))
    taken = frozenset(own.values())
    printed_on = {key: own[key] for key in worked if own.get(key)}
    unmarked = [thing for thing in things if thing.key not in printed_on]
    return Labels(
        screws, of_hole, _in_order(worked, {**printed_on, **_letters(unmarked, taken)}), loose
    )


def _in_order(worked: Iterable[str], found: Mapping[str, str]) -> dict[str, str]:
    return {key: found[key] for key in worked if key in found}


def _worked(proof: Proof) -> Iterator[str]:
    """Keys in the order in which hands come to them: first what is on the device, then what is renewed."""
    moves = [
        one.doing
        for passage in proof.passages
        for one in passage.walked
        if isinstance(one.doing, Move)
    ]
    yield from (move.thing for move in moves if move.verb not in REPLACING)
    yield from (move.thing for move in moves)


def _holes(proof: Proof) -> frozenset[str]:
    return frozenset(hole.key for hole in proof.device.holes)


def _screws(
    proof: Proof, keys: Iterable[str]
) -> tuple[tuple[Numbered, ...], dict[str, tuple[tuple[Numbered, int], ...]]]:
    known: dict[tuple[object, ...], Numbered] = {}
    of_hole = {}
    for key in keys:
        hole = proof.device.things[key]
        assert isinstance(hole, Hole)
        found = []
        for screw, where in values(proof, hole.screw, proof.configurations.everywhere):
            looks = (screw.thread, screw.length, screw.head, screw.drive, screw.standard)
            one = known.setdefault(looks, Numbered(str(len(known) + 1), screw))
            found.append((one, where))
        if found:
            of_hole[key] = tuple(found)
    return tuple(known.values()), of_hole


def _letters(things: Iterable[Thing], taken: frozenset[str]) -> dict[str, str]:
    """Letters in the order of the work, without those that are printed on a plug."""
    lettered = [one for one in things if _has_letter(one)]
    letters = ("".join(some) for size in (1, 2) for some in product(_LETTERS, repeat=size))
    free = (letter for letter in letters if letter not in taken)
    by_id = {id: next(free) for id in dict.fromkeys(one.id for one in lettered)}
    return {one.key: by_id[one.id] for one in lettered}


def _is_captive(thing: Thing) -> bool:
    return isinstance(thing, Hole) and thing.captive


def _has_letter(thing: Thing) -> bool:
    """Parts, joints and plugs, and of what a device holds all but power and what is only set."""
    if isinstance(thing, Store):
        return thing.kind is Kind.STORE and thing.store != "calibration"
    return thing.kind in (Kind.PART, Kind.JOINT, Kind.CONNECTOR)
